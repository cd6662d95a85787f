using System.Collections.Immutable;
using NodaTime;
using RideAudit.Weeks;

namespace RideAudit.Rules.Changes;

/// <summary>A change in one sentence.</summary>
internal static class ChangeSentence
{
    public static string For(ImmutableArray<RideChange> changes, ImmutableArray<string> keeps, WeekFacts week)
    {
        var first = changes[0];
        var what = first.Kind switch
        {
            ChangeKind.Swap => Swapped(changes, week),
            ChangeKind.Ease => $"{Ride(first, week)} ridden easy for the same time",
            ChangeKind.Lengthen => $"{Ride(first, week)} lengthened to {Say.Time((first.Minutes ?? 0) * 60)} at its own easy pace",
            _ => $"{Say.List(changes.Select(c => $"{Ride(c, week)} on {Say.Day(c.To)}"))} instead",
        };
        return $"{what} would have kept {Rules(keeps)}.";
    }

    public static string None(IEnumerable<string> broken) =>
        $"No change to one or two rides would have kept {Rules(broken)} without costing another rule.";

    private static string Swapped(ImmutableArray<RideChange> changes, WeekFacts week)
    {
        var (a, b) = changes[0].From <= changes[1].From ? (changes[0], changes[1]) : (changes[1], changes[0]);
        return IsAlone(a, week) && IsAlone(b, week)
            ? $"{Say.Day(a.From)}’s and {Say.Day(b.From)}’s rides swapped"
            : $"{Ride(a, week)} and {Ride(b, week)} swapped";
    }

    private static string Ride(RideChange change, WeekFacts week)
    {
        if (IsAlone(change, week))
            return $"{Say.Day(change.From)}’s ride";
        var ride = DayOf(change.From, week).Rides.First(r => r.File == change.Ride);
        return $"{Say.Day(change.From)}’s {ride.StartsAt.TimeOfDay.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture)} ride";
    }

    private static bool IsAlone(RideChange change, WeekFacts week) => DayOf(change.From, week).Rides.Length == 1;

    private static DayFacts DayOf(LocalDate date, WeekFacts week) => week.Days[Period.DaysBetween(week.StartsOn, date)];

    private static string Rules(IEnumerable<string> ids)
    {
        var names = ids.Select(Name).ToList();
        return $"{Say.List(names)} rule{(names.Count > 1 ? "s" : "")}" is var text && names.Count > 0 ? $"the {text}" : "a rule";
    }

    private static string Name(string id) => id switch
    {
        "hard-day-spacing" => "spacing",
        "hard-day-count" => "hard-day",
        "rest-days" => "rest-day",
        "rest-after-load" => "rest-after-load",
        "long-ride" => "long-ride",
        "long-ride-first" => "long-ride-first",
        _ => id,
    };
}
