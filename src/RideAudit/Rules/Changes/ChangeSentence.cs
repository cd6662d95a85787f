using System.Collections.Immutable;
using NodaTime;
using RideAudit.Formatting;
using RideAudit.Weeks;

namespace RideAudit.Rules.Changes;

/// <summary>A change in one sentence.</summary>
internal static class ChangeSentence
{
    public static string For(ImmutableArray<RideChange> changes, ImmutableArray<Rule> keeps, WeekFacts week)
    {
        var what = changes[0].Kind == ChangeKind.Swap ? Swapped(changes, week)
            : changes.All(c => c.Kind == ChangeKind.Move) ? $"{Shown.List(changes.Select(c => $"{Ride(c, week)} on {Shown.Weekday(c.To)}"))} instead"
            : changes.Length > 1 && changes.All(c => c.Kind == changes[0].Kind && IsDoneInPlace(c.Kind)) ? Alike(changes, week)
            : Shown.List(changes.Select(c => One(c, week)));
        return $"{what} would have kept {Named(keeps)}.";
    }

    public static string None(Rule lead, bool triesPairs) =>
        $"No change to one {(triesPairs ? "or two rides" : "ride")} would have kept {Named([lead])} without costing another rule.";

    private static bool IsDoneInPlace(ChangeKind kind) => kind is ChangeKind.Ease or ChangeKind.LeaveOut;

    // What is done to two rides is said once.
    private static string Alike(ImmutableArray<RideChange> changes, WeekFacts week)
    {
        RideChange[] inOrder = [.. changes.OrderBy(c => c.From)];
        var rides = inOrder.All(c => IsAlone(c, week))
            ? $"{Shown.List(inOrder.Select(c => $"{Shown.Weekday(c.From)}’s"))} rides"
            : Shown.List(inOrder.Select(c => Ride(c, week)));
        return $"{rides} {Done(changes[0].Kind)}";
    }

    private static string Done(ChangeKind kind) => kind == ChangeKind.Ease ? "ridden easy for the same time" : "left out";

    private static string One(RideChange change, WeekFacts week) => change.Kind switch
    {
        ChangeKind.Ease or ChangeKind.LeaveOut => $"{Ride(change, week)} {Done(change.Kind)}",
        ChangeKind.Lengthen => $"{Ride(change, week)} lengthened to {Shown.Length((change.Minutes ?? 0) * 60)} at its own easy pace",
        ChangeKind.RideLong => $"{Ride(change, week)} ridden as the long ride, {Shown.Length((change.Minutes ?? 0) * 60)} and all of it easy,",
        _ => $"{Ride(change, week)} on {Shown.Weekday(change.To)} instead",
    };

    private static string Swapped(ImmutableArray<RideChange> changes, WeekFacts week)
    {
        var (a, b) = changes[0].From <= changes[1].From ? (changes[0], changes[1]) : (changes[1], changes[0]);
        return IsAlone(a, week) && IsAlone(b, week)
            ? $"{Shown.Weekday(a.From)}’s and {Shown.Weekday(b.From)}’s rides swapped"
            : $"{Ride(a, week)} and {Ride(b, week)} swapped";
    }

    private static string Ride(RideChange change, WeekFacts week)
    {
        if (IsAlone(change, week))
            return $"{Shown.Weekday(change.From)}’s ride";
        var ride = DayOf(change.From, week).Rides.First(r => r.File == change.Ride);
        return $"{Shown.Weekday(change.From)}’s {Shown.Time(ride.StartsAt.TimeOfDay)} ride";
    }

    private static bool IsAlone(RideChange change, WeekFacts week) => DayOf(change.From, week).Rides.Length == 1;

    private static DayFacts DayOf(LocalDate date, WeekFacts week) => week.Days[Period.DaysBetween(week.StartsOn, date)];

    private static string Named(IReadOnlyCollection<Rule> rules) =>
        $"the {Shown.List(rules.Select(r => r.ShortName))} {Shown.Noun(rules.Count, "rule")}";
}
