using RideAudit.Report.Flow;
using RideAudit.Report.Look;

namespace RideAudit.Report.Roster;

/// <summary>The heads of the overview's columns.</summary>
/// <param name="columns">The columns.</param>
internal sealed class RosterHeads(RosterColumns columns) : Block
{
    private const float Air = 4;

    /// <inheritdoc/>
    public override float Height => Styles.Small.Leading + Air;

    /// <inheritdoc/>
    public override void Draw(Ink ink, float x, float y)
    {
        float baseline = y + Styles.Small.Ascent;
        ink.Text("need", Styles.Small, x + RosterColumns.Mark, baseline);
        ink.Text("rider and why", Styles.Small, x + RosterColumns.Label, baseline);
        ink.Text("h, planned", Styles.Small, x + columns.Hours, baseline, Align.End);
        ink.Text("stress", Styles.Small, x + columns.Stress, baseline, Align.End);
        ink.Text("low, by time", Styles.Small, x + columns.Low, baseline, Align.End);
        ink.Text("ramp", Styles.Small, x + columns.Ramp, baseline, Align.End);
    }
}
