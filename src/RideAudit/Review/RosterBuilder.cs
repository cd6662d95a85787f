using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Held;
using RideAudit.Plan;
using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>Puts riders side by side, who needs the coach first at the top: by risk to the rider, never by how many rules. Among equals the label decides.</summary>
public static class RosterBuilder
{
    /// <summary>Builds the overview.</summary>
    /// <param name="asOf">The date asked for, or today.</param>
    /// <param name="riders">What came of each folder, in any order.</param>
    public static RosterDocument Build(LocalDate asOf, IEnumerable<RosterInput> riders)
    {
        ImmutableArray<(RosterInput Input, RosterEntry Entry)> ordered =
        [
            .. riders
                .Select(r => (Input: r, Entry: Entry(r)))
                .Select(r => (r.Input, Entry: r.Entry with { Facts = [.. RosterFacts.Of(r.Entry, asOf)] }))
                .OrderBy(r => RiderRisk.Of(r.Input.Review, r.Entry.Need))
                .ThenBy(r => r.Entry.Label, StringComparer.Ordinal)
                .ThenBy(r => r.Entry.Folder, StringComparer.Ordinal),
        ];
        return new RosterDocument("rideaudit-roster/1", asOf, [.. ordered.Select(r => r.Entry)]) { Shared = Shared(ordered) };
    }

    private static RosterEntry Entry(RosterInput input)
    {
        if (input.Review is not { } review)
            return new RosterEntry { Folder = input.Folder, Label = input.Folder, Need = RosterNeed.NoReview, Why = OneLine(input.Problem ?? "No review.") };
        HeldEntry[] planned = [.. review.Week.PlannedAndRidden.Where(h => h.Planned is { Kind: not PlannedKind.Rest })];
        int? sessions = review.Week.Planned is null ? null : planned.Length;
        return new RosterEntry
        {
            Folder = input.Folder,
            Label = input.HasRiderFile ? review.Rider.Label : input.Folder,
            Need = Need(review),
            Why = OneLine(review.Summary.Headline),
            WeekStartsOn = review.Week.StartsOn,
            Broken = Rules(review, Verdict.Broken),
            Watch = Rules(review, Verdict.Watch),
            NotJudged = review.Findings.Count(f => f.Verdict == Verdict.NotJudged),
            Hours = review.Week.Hours,
            PlannedHours = review.Week.Planned?.Hours ?? review.Rider.PlannedHours,
            Stress = review.Week.Stress,
            LowShare = review.Week.SplitByTime?.Low,
            RampPerWeek = review.Week.RampPerWeek,
            FilesNotUsed = review.Notices.Where(n => n.Unusable).Sum(n => n.Files),
            ReviewFile = input.ReviewFile,
            Exception = review.Week.Exception,
            PlannedSessions = sessions,
            PlannedSessionsDone = sessions is null ? null : planned.Count(h => !h.Outcomes.Contains(HeldOutcome.Missed)),
            Note = review.Note,
            NextEvent = review.NextEvent,
            Verdicts = [.. review.Findings.Select(f => new RosterEntry.RuleVerdict(f.Rule, f.Name, f.Verdict))],
            Weeks = review.LastWeeks,
        };
    }

    private static RosterNeed Need(ReviewDocument review)
    {
        var broken = review.Findings.Where(f => f.Verdict == Verdict.Broken).ToArray();
        if (broken.Any(f => f.Standing.Protects))
            return RosterNeed.Broken;
        if (review.Week.Exception is ExceptionKind.Ill or ExceptionKind.Away)
            return review.Week.Exception == ExceptionKind.Ill ? RosterNeed.Ill : RosterNeed.Away;
        if (broken.Length > 0)
            return RosterNeed.Broken;
        if (review.Findings.Any(f => f.Verdict == Verdict.Watch))
            return RosterNeed.Watch;
        if (review.Week.Exception == ExceptionKind.Event)
            return RosterNeed.Event;
        return Unjudged.IsMuch(review.Week.Finished, review.Findings) ? RosterNeed.NotJudged : RosterNeed.Kept;
    }

    // Riders share a finding when the same rule says the same of them.
    private static ImmutableArray<RosterDocument.SharedFinding> Shared(ImmutableArray<(RosterInput Input, RosterEntry Entry)> riders) =>
        [.. riders
            .SelectMany(r => (r.Input.Review?.Findings ?? []).Where(f => f.Verdict is Verdict.Broken or Verdict.Watch).Select(f => (Finding: f, r.Entry.Folder)))
            .GroupBy(f => (f.Finding.Rule, f.Finding.Verdict))
            .Where(g => g.Count() > 1)
            .OrderByDescending(g => g.Key.Verdict).ThenBy(g => g.Min(f => f.Finding.Standing.Rank)).ThenBy(g => g.Key.Rule, StringComparer.Ordinal)
            .Select(g => new RosterDocument.SharedFinding(g.Key.Rule, g.First().Finding.Name, g.Key.Verdict, [.. g.Select(f => f.Folder)]))];

    private static ImmutableArray<string> Rules(ReviewDocument review, Verdict verdict) =>
        [.. review.Findings.Where(f => f.Verdict == verdict).Select(f => f.Rule)];

    private static string OneLine(string text) => string.Join(' ', text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
}
