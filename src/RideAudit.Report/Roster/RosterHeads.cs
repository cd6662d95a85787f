using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Look;

namespace RideAudit.Report.Roster;

/// <summary>The heads of the overview's columns.</summary>
internal sealed class RosterHeads(RosterColumns columns) : Block
{
    private const float Air = 4;

    /// <inheritdoc/>
    public override float Height => Styles.Small.Leading + Air;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        var baseline = y + Styles.Small.Ascent;
        surface.Text("need", Styles.Small, x + RosterColumns.Mark, baseline);
        surface.Text("rider and why", Styles.Small, x + RosterColumns.Label, baseline);
        surface.Text("h, planned", Styles.Small, x + columns.Hours, baseline, Align.End);
        surface.Text("stress", Styles.Small, x + columns.Stress, baseline, Align.End);
        surface.Text("low, by time", Styles.Small, x + columns.Low, baseline, Align.End);
        surface.Text("ramp", Styles.Small, x + columns.Ramp, baseline, Align.End);
    }
}
