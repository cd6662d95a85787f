using RideAudit.Document;
using RideAudit.Report.Drawing;
using RideAudit.Report.Look;

namespace RideAudit.Report.Charts;

/// <summary>One thing to follow over the weeks.</summary>
internal abstract class TrendTopic(string title, string caption)
{
    /// <summary>The line of a level asked for: short dashes.</summary>
    protected static readonly Pen Asked = new(Palette.Ink, 0.8f, 3) { Gap = 2.5f };

    /// <summary>What the chart shows, as a finding.</summary>
    public string Title { get; } = title;

    /// <summary>The chart in words: what is drawn, its unit, its range and its last value.</summary>
    public string Caption { get; } = caption;

    /// <summary>Draws into an area.</summary>
    public abstract void Draw(Surface surface, ReviewDocument review, Area area);
}
