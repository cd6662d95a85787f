using RideAudit.Document;
using SkiaSharp;

namespace RideAudit.Report.Charts;

/// <summary>One thing to follow over the weeks.</summary>
internal abstract class TrendTopic(string title, string caption)
{
    /// <summary>What the chart shows, as a finding.</summary>
    public string Title { get; } = title;

    /// <summary>The chart in words: what is drawn, its unit, its range and its last value.</summary>
    public string Caption { get; } = caption;

    /// <summary>Draws into an area.</summary>
    public abstract void Draw(Ink ink, ReviewDocument review, SKRect area);
}
