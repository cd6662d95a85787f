namespace RideAudit.Report.Flow;

/// <summary>A thin rule across, with a little air under it.</summary>
/// <param name="width">Length, pt.</param>
/// <param name="air">White space under the rule, pt.</param>
internal sealed class HairlineBlock(float width, float air = 0) : Block
{
    /// <inheritdoc/>
    public override float Height => air;

    /// <inheritdoc/>
    public override void Draw(Ink ink, float x, float y) => ink.Hairline(x, x + width, y);
}
