using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>The spans between hard rides that the spacing line hangs out.</summary>
internal static class Spans
{
    /// <summary>From each hard ride's end to the next one's start, the last hard ride of the week before included when it lies on its last day.</summary>
    public static ImmutableArray<SpanEntry> Of(WeekUnderReview review, Finding? spacing)
    {
        var before = review.Past.LastWeek is { } last && last.EndsOn == review.Week.StartsOn.PlusDays(-1)
            ? last.Days[6].Rides.Where(r => r.IsHard)
            : [];
        var hard = before.Concat(review.Week.Rides.Where(r => r.IsHard)).OrderBy(r => r.StartsAt.ToInstant()).ToArray();
        var spans = ImmutableArray.CreateBuilder<SpanEntry>();
        for (var i = 1; i < hard.Length; i++)
            spans.Add(Between(hard[i - 1], hard[i], spacing));
        return spans.ToImmutable();
    }

    private static SpanEntry Between(RideFigures earlier, RideFigures later, Finding? spacing)
    {
        var occurrence = spacing?.Occurrences
            .Where(o => o.Rides.Contains(earlier.File) && o.Rides.Contains(later.File))
            .Select(o => (Verdict?)o.Verdict)
            .Max();
        return new SpanEntry
        {
            From = earlier.EndsAt,
            To = later.StartsAt,
            FromRide = earlier.File,
            ToRide = later.File,
            Hours = (later.StartsAt.ToInstant() - earlier.EndsAt.ToInstant()).TotalHours.To(1),
            Verdict = Words.Of(occurrence ?? (spacing?.Verdict == Verdict.NotJudged ? Verdict.NotJudged : Verdict.Kept)),
        };
    }
}
