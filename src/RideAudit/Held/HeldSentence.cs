using System.Collections.Immutable;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Units;

namespace RideAudit.Held;

/// <summary>What became of a session, in one sentence without praise or blame.</summary>
internal static class HeldSentence
{
    public static string Ridden(PlannedSession session, RiddenGroup ridden, ImmutableArray<HeldOutcome> outcomes)
    {
        var parts = new List<string>();
        if (outcomes.Contains(HeldOutcome.Moved))
            parts.Add($"ridden on {Shown.Weekday(ridden.Date)}");
        if (ridden.Rides.Length > 1)
            parts.Add($"ridden in {Shown.Count(ridden.Rides.Length, "ride")}");
        if (outcomes.Contains(HeldOutcome.Shorter))
            parts.Add($"shorter, {Length(ridden.Minutes)} of {Length(session.Minutes ?? 0)}");
        if (outcomes.Contains(HeldOutcome.Longer))
            parts.Add($"longer, {Length(ridden.Minutes)} where {Length(session.Minutes ?? 0)} were planned");
        if (outcomes.Contains(HeldOutcome.Harder))
            parts.Add($"harder than meant, {Article(ridden.Kind)} ride");
        if (outcomes.Contains(HeldOutcome.Easier))
            parts.Add($"easier than meant, {Article(ridden.Kind)} ride");
        return $"{Named(session)}: {(outcomes is [HeldOutcome.Done] ? parts.Count == 0 ? "done" : $"done, {parts[0]}" : string.Join("; ", parts))}.";
    }

    public static string Missed(PlannedSession session, ExceptionKind? exception) => $"{Named(session)}: not ridden{exception switch
    {
        ExceptionKind.Ill => ", ill",
        ExceptionKind.Away => ", away",
        _ => "",
    }}.";

    public static string Added(RideFigures ride) =>
        $"{Shown.Weekday(ride.Date)}: {Article(ride.Kind)} ride of {Length(ride.DurationSeconds / 60)} that was not planned.";

    public static string Rested(PlannedSession rest) => $"{Shown.Weekday(rest.Date)}: rest, as planned.";

    public static string RestRidden(PlannedSession rest, ImmutableArray<RideFigures> rides) =>
        $"{Shown.Weekday(rest.Date)} was to be rest: {Length(rides.Sum(r => r.DurationSeconds) / 60)} ridden{(rides.Any(r => r.IsHard) ? $", {Article(rides.Max(r => r.Kind))} ride" : "")}.";

    private static string Named(PlannedSession session) => $"{Shown.Weekday(session.Date)}’s {session.Session ?? session.Kind switch
    {
        PlannedKind.Event => "event",
        PlannedKind.Threshold or PlannedKind.High => $"{PlannedKinds.WordOf(session.Kind)} session",
        _ => $"{PlannedKinds.WordOf(session.Kind)} ride",
    }}";

    private static string Article(RideKind kind) => kind switch
    {
        RideKind.Endurance => "an endurance",
        RideKind.Unrated => "an unrated",
        _ => $"a {kind.ToString().ToLowerInvariant()}",
    };

    private static string Length(double minutes) => Shown.Length(minutes * 60);
}
