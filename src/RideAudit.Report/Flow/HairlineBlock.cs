using RideAudit.Report.Drawing;
using RideAudit.Report.Look;

namespace RideAudit.Report.Flow;

/// <summary>A thin rule across, with a little air under it.</summary>
/// <param name="width">Length, pt.</param>
/// <param name="air">White space under the rule, pt.</param>
internal sealed class HairlineBlock(float width, float air = 0) : Block
{
    /// <inheritdoc/>
    public override Tag? Tag => Drawing.Tag.Artifact;

    /// <inheritdoc/>
    public override float Height => air;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y) => surface.Hairline(x, x + width, y);
}
