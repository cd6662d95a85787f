using System.Collections.Immutable;
using NodaTime;
using RideAudit.Formatting;
using RideAudit.Held;
using RideAudit.Plan;
using RideAudit.Plan.Table;

namespace RideAudit.Next;

/// <summary>What became of the sessions that were planned for days of a week begun and not ridden: on another day, or left out, and why.</summary>
internal static class MissedSessions
{
    public static ImmutableArray<string> Of(WeekFrame frame, Layout layout, PlanTable table)
    {
        var from = frame.Days.FirstOrDefault(d => d.Ridden is null)?.Date;
        if (from is not { } first || frame.Days[0].Ridden is null)
            return [];
        ImmutableArray<PlannedSession> planned = [.. table.Week(frame.StartsOn).Where(s => s.Date < first && !s.IsRest)];
        ImmutableArray<Figures.RideFigures> rides = [.. frame.Days.SelectMany(d => d.Ridden?.Rides ?? [])];
        var taken = new HashSet<LocalDate>();
        return [.. HeldWeek.Of(planned, rides, frame.Calendar.KindOn)
            .Where(l => l.Planned is not null)
            .Select(l => l.Outcomes.Contains(HeldOutcome.Missed) ? Sentence(l.Planned!, frame, layout, table, taken)
                : l.Outcomes.Contains(HeldOutcome.Moved) ? $"{What(l.Planned!)} was ridden on {Shown.Weekday(l.RiddenOn!.Value)}."
                : null)
            .OfType<string>()];
    }

    private static string Sentence(PlannedSession missed, WeekFrame frame, Layout layout, PlanTable table, HashSet<LocalDate> taken)
    {
        var what = $"{What(missed)} was not ridden";
        var day = missed.Kind is PlannedKind.Recovery or PlannedKind.Endurance ? -1 : Enumerable.Range(0, 7).FirstOrDefault(
            i => frame.Days[i] is { Ridden: null, Standing.IsEmpty: true } && !taken.Contains(frame.Days[i].Date) && layout.Rides[i].Any(r => r.Kind == missed.Kind) && table.On(frame.Days[i].Date).All(s => s.Kind != missed.Kind), -1);
        if (day >= 0)
        {
            taken.Add(frame.Days[day].Date);
            return $"{what}; it is laid out on {Shown.Weekday(frame.Days[day].Date)} instead.";
        }
        return $"{what} and is left out: {Why(missed, frame, layout, table)}.";
    }

    private static string What(PlannedSession planned) => $"{Shown.Weekday(planned.Date)}’s {PlannedKinds.WordOf(planned.Kind)} session";

    private static string Why(PlannedSession missed, WeekFrame frame, Layout layout, PlanTable table)
    {
        if (missed.Kind is PlannedKind.Recovery or PlannedKind.Endurance)
            return EasyMinutesMore(frame, layout, table) > 0 ? "the days left take some of its time" : "easy hours are not made up for";
        var isFree = Enumerable.Range(0, 7).Any(i => frame.Days[i] is { IsSettled: false } day && day.MostMinutes >= missed.Minutes
            && (missed.Kind == PlannedKind.Long || (day.MayBeHard && !IsHard(i - 1) && !IsHard(i + 1))));
        if (missed.Kind == PlannedKind.Long)
            return layout.Facts.Rides.Any(r => r.LongEnough) ? "the week has its long ride" : isFree ? "it would be too much for the days left" : "no day left has room for it";
        return layout.Facts.Days.Count(d => d.IsHard) >= frame.Aim.HardDays ? "the week has its hard days without it"
            : isFree ? "easy riding comes first on the days left"
            : "no day left has room for it and keeps it apart from the other hard days";

        bool IsHard(int day) => day is >= 0 and < 7 && layout.Facts.Days[day].IsHard;
    }

    // Easy riding on the days left, beside what was planned for them.
    private static int EasyMinutesMore(WeekFrame frame, Layout layout, PlanTable table)
    {
        var left = Enumerable.Range(0, 7).Where(i => frame.Days[i].Ridden is null).ToArray();
        return left.Sum(i => layout.Rides[i].Where(r => IsEasy(r.Kind)).Sum(r => r.Minutes))
            - left.Sum(i => table.On(frame.Days[i].Date).Where(s => IsEasy(s.Kind)).Sum(s => s.Minutes ?? 0));

        static bool IsEasy(PlannedKind kind) => kind is PlannedKind.Recovery or PlannedKind.Endurance or PlannedKind.Long;
    }
}
