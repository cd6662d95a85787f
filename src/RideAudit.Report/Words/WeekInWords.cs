using RideAudit.Document;

namespace RideAudit.Report.Words;

/// <summary>Page one's pictures as sentences, for whoever cannot see them.</summary>
internal static class WeekInWords
{
    /// <summary>The spans between hard rides and the split; empty when there is neither.</summary>
    public static string Of(WeekEntry week)
    {
        string spans = week.Spans.IsEmpty ? "" : "Between hard rides: " + string.Join(", ", week.Spans.Select(Span)) + ". ";
        return (spans + Split(week)).Trim();
    }

    private static string Span(SpanEntry span) =>
        $"{Say.ShortDay(span.From.Date)} to {Say.ShortDay(span.To.Date)} {Say.Unit(span.Hours, 1, "h")} ({Formatting.Words.Of(span.Verdict)})";

    private static string Split(WeekEntry week)
    {
        if (week.SplitByTime is not { } split)
            return "";
        string intended = week.IntendedLowShare is { } share ? $"; intended {Say.Percent(share)} low" : "";
        string tolerance = week.SplitTolerance is { } points ? $" ± {Say.Number(points * 100)} points" : "";
        return $"Split by time: {Say.Percent(split.Low)} low, {Say.Percent(split.Middle)} middle, {Say.Percent(split.High)} high{intended}{tolerance}.";
    }
}
