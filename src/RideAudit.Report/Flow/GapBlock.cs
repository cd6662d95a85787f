using RideAudit.Report.Drawing;

namespace RideAudit.Report.Flow;

/// <summary>White space.</summary>
/// <param name="depth">Depth, pt.</param>
internal sealed class GapBlock(float depth) : Block
{
    /// <inheritdoc/>
    public override Tag? Tag => Drawing.Tag.Artifact;

    /// <inheritdoc/>
    public override float Height => depth;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
    }
}
