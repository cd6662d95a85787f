using RideAudit.Document;
using RideAudit.Formatting;

namespace RideAudit.Report.Words;

/// <summary>Page one's pictures as sentences, for whoever cannot see them.</summary>
internal static class WeekInWords
{
    /// <summary>The spans between hard rides and the split; empty when there is neither.</summary>
    public static string Of(WeekEntry week)
    {
        var spans = week.Spans.IsEmpty ? "" : Spans(week) + " ";
        return (spans + Split(week)).Trim();
    }

    /// <summary>The spacing line in words: each day's kind, time and stress, the spans between hard rides, and the smallest change.</summary>
    public static string Days(ReviewDocument review)
    {
        var days = review.Week.Days.Select(day => day.Hours > 0
            ? $"{Shown.Weekday(day.Date)} {day.KindInWords}, {Shown.Length(day.Hours * 3600)}, {(day.Stress is { } stress ? Shown.Points(stress) : "stress unknown")}."
            : $"{Shown.Weekday(day.Date)} {day.KindInWords}.");
        return string.Join(' ', [.. days, .. review.Week.Spans.IsEmpty ? [] : new[] { Spans(review.Week) }, .. review.SmallestChange is { } change ? new[] { change.Sentence } : []]);
    }

    private static string Spans(WeekEntry week) => "Between hard rides: " + string.Join(", ", week.Spans.Select(Span)) + ".";

    private static string Span(SpanEntry span) =>
        $"{Shown.ShortDay(span.From.Date)} to {Shown.ShortDay(span.To.Date)} {Shown.Hours(span.Hours)} ({Formatting.Words.Of(span.Verdict)})";

    private static string Split(WeekEntry week)
    {
        if (week.SplitByTime is not { } split)
            return "";
        var intended = week.IntendedLowShare is { } share ? $"; intended {Shown.Share(share)} low" : "";
        var tolerance = week.SplitTolerance is { } points ? $" ± {Shown.Number(points * 100)} points" : "";
        return $"Split by time: {Shown.Share(split.Low)} low, {Shown.Share(split.Middle)} middle, {Shown.Share(split.High)} high{intended}{tolerance}.";
    }
}
