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
        if (IsEasy(missed))
            return $"{what} and is left out: {(MinutesLeft(frame, layout) > MinutesPlanned(frame, table) ? "the days left take some of its time" : "easy hours are not made up for")}.";
        var day = Enumerable.Range(0, 7).FirstOrDefault(
            i => frame.Days[i] is { Ridden: null, Standing.IsEmpty: true } && !taken.Contains(frame.Days[i].Date) && layout.Rides[i].Any(r => r.Kind == missed.Kind) && table.On(frame.Days[i].Date).All(s => s.Kind != missed.Kind), -1);
        if (day >= 0)
        {
            taken.Add(frame.Days[day].Date);
            return $"{what}; it is laid out on {Shown.Weekday(frame.Days[day].Date)} instead.";
        }
        return $"{what} and is left out: {Why(missed, frame, layout)}.";
    }

    private static bool IsEasy(PlannedSession session) => session.Kind is PlannedKind.Recovery or PlannedKind.Endurance;

    private static int MinutesLeft(WeekFrame frame, Layout layout) =>
        Enumerable.Range(0, 7).Where(i => frame.Days[i].Ridden is null).Sum(i => layout.Rides[i].Sum(r => r.Minutes));

    private static int MinutesPlanned(WeekFrame frame, PlanTable table) =>
        frame.Days.Where(d => d.Ridden is null).Sum(d => table.On(d.Date).Sum(s => s.Minutes ?? 0));

    private static string What(PlannedSession planned) => $"{Shown.Weekday(planned.Date)}’s {PlannedKinds.WordOf(planned.Kind)} session";

    private static string Why(PlannedSession missed, WeekFrame frame, Layout layout)
    {
        var isFree = Enumerable.Range(0, 7).Any(i => frame.Days[i] is { IsSettled: false } day && day.MostMinutes >= missed.Minutes
            && (missed.Kind == PlannedKind.Long || (day.MayBeHard && !IsHard(i - 1) && !IsHard(i + 1))));
        if (missed.Kind == PlannedKind.Long)
            return layout.Facts.Rides.Any(r => r.LongEnough) ? "the week has its long ride" : isFree ? "it would be too much for the days left" : "no day left has room for it";
        return layout.Facts.Days.Count(d => d.IsHard) >= frame.Aim.HardDays ? "the week has its hard days without it"
            : isFree ? "easy riding comes first on the days left"
            : "no day left has room for it and keeps it apart from the other hard days";

        bool IsHard(int day) => day is >= 0 and < 7 && layout.Facts.Days[day].IsHard;
    }
}
