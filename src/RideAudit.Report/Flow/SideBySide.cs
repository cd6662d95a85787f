using RideAudit.Report.Drawing;

namespace RideAudit.Report.Flow;

/// <summary>Two blocks beside each other, their feet on one line.</summary>
/// <param name="left">The left one.</param>
/// <param name="right">The right one.</param>
/// <param name="rightAt">Where the right one begins, pt from the left edge.</param>
internal sealed class SideBySide(Block left, Block right, float rightAt) : Block
{
    /// <inheritdoc/>
    public override Tag? Tag => null;

    /// <inheritdoc/>
    public override float Height => Math.Max(left.Height, right.Height);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        left.DrawTagged(surface, x, y + Height - left.Height);
        right.DrawTagged(surface, x + rightAt, y + Height - right.Height);
    }
}
