using RideAudit.Document;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;

namespace RideAudit.Report.Roster;

/// <summary>Each rider's small spacing lines as a picture of its own, without their dates: what shows the picture sets them.</summary>
internal sealed class SmallLinePages(RosterDocument roster) : IPages
{
    /// <inheritdoc/>
    public Sheet Sheet { get; } = new(SmallLine.Width, SmallLine.UndatedDepth, 0);

    /// <inheritdoc/>
    public int Count => roster.Riders.Length;

    /// <inheritdoc/>
    public IEnumerable<OutlineLine> Outline => [];

    /// <inheritdoc/>
    public void Draw(int page, Surface surface) => new SmallLine(roster.Riders[page].Weeks).Draw(surface, 0, 0, dated: false);
}
