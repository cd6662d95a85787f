using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>Orders riders by who needs the coach first.</summary>
/// <remarks>
/// The order is our choice: broken rules first, weighed by what they protect; then riders without a review, whose week nobody has seen;
/// then rules to watch, an unexplained week without a ride before the others; then the rest. Among equals the label decides, so that the order is the same every time.
/// </remarks>
public static class RosterBuilder
{
    /// <summary>Builds the overview.</summary>
    /// <param name="asOf">The date asked for, or today.</param>
    /// <param name="riders">What came of each folder, in any order.</param>
    public static RosterDocument Build(LocalDate asOf, IEnumerable<RosterInput> riders) => new(
        "rideaudit-roster/1",
        asOf,
        [.. riders
            .Select(r => (Input: r, Entry: Entry(r)))
            .OrderBy(r => r.Entry.Need)
            .ThenByDescending(r => Weight(r.Input.Review, Verdict.Broken))
            .ThenByDescending(r => r.Input.Review is { Week: { RideCount: 0, Exception: null } })
            .ThenByDescending(r => Weight(r.Input.Review, Verdict.Watch))
            .ThenBy(r => r.Entry.Label, StringComparer.Ordinal)
            .ThenBy(r => r.Entry.Folder, StringComparer.Ordinal)
            .Select(r => r.Entry)]);

    // Rules that guard against too much too close together weigh more than those that shape the week.
    private static int Weight(ReviewDocument? review, Verdict verdict) =>
        review is null ? 0 : review.Findings.Where(f => f.Verdict == verdict).Sum(f => f.Standing.Protects ? 2 : 1);

    private static RosterEntry Entry(RosterInput input)
    {
        if (input.Review is not { } review)
            return new RosterEntry { Folder = input.Folder, Label = input.Folder, Need = RosterNeed.NoReview, Why = OneLine(input.Problem ?? "No review.") };
        var broken = Rules(review, Verdict.Broken);
        var watch = Rules(review, Verdict.Watch);
        return new RosterEntry
        {
            Folder = input.Folder,
            Label = input.HasRiderFile ? review.Rider.Label : input.Folder,
            Need = broken.Length > 0 ? RosterNeed.Broken : watch.Length > 0 ? RosterNeed.Watch : RosterNeed.Kept,
            Why = OneLine(review.Summary.Headline),
            WeekStartsOn = review.Week.StartsOn,
            Broken = broken,
            Watch = watch,
            NotJudged = review.Findings.Count(f => f.Verdict == Verdict.NotJudged),
            Hours = review.Week.Hours,
            PlannedHours = review.Week.Planned?.Hours ?? review.Rider.PlannedHours,
            Stress = review.Week.Stress,
            LowShare = review.Week.SplitByTime?.Low,
            RampPerWeek = review.Week.RampPerWeek,
            FilesNotUsed = review.Notices.Where(n => n.Unusable).Sum(n => n.Files),
            ReviewFile = input.ReviewFile,
            Exception = review.Week.Exception,
        };
    }

    private static ImmutableArray<string> Rules(ReviewDocument review, Verdict verdict) =>
        [.. review.Findings.Where(f => f.Verdict == verdict).Select(f => f.Rule)];

    private static string OneLine(string text) => string.Join(' ', text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
}
