using System.Collections.Immutable;
using NodaTime;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Weeks;

namespace RideAudit.Review;

/// <summary>The headline of a week that was no ordinary one: ill, away, or with an event in it.</summary>
internal static class ExceptedWeek
{
    /// <summary>The headline; null for an ordinary or a lighter week.</summary>
    /// <param name="ranked">Broken and watched rules, most serious first.</param>
    public static string? Headline(WeekUnderReview week, ImmutableArray<Finding> ranked)
    {
        var background = new Background(week);
        var exceptions = background.Exceptions;
        var guard = ranked.FirstOrDefault(f => f.Verdict == Verdict.Broken && f.Standing.Protects);
        if (exceptions.Ill)
            return $"An ill week: {Out(week, background.Calendar, ExceptionKind.Ill)}{Rides(week.Week)}{And(guard)}.";
        if (exceptions.Event)
            return $"An event week: {Event(week.Week, background.Calendar)}{(guard is null ? Recovery(week.Week, background.Calendar) : And(guard))}.";
        return exceptions.Away ? $"A week away{Rides(week.Week)}{And(guard)}." : null;
    }

    private static string And(Finding? finding) => finding is null ? "" : $", and {finding.Headline}";

    private static string Rides(WeekFacts week) => week.RideCount == 0 ? ", no ride" : $", {Shown.Count(week.RideCount, "ride")}";

    private static string Out(WeekUnderReview week, PlanCalendar calendar, ExceptionKind kind)
    {
        var days = week.Week.Days.Where(d => calendar.KindOn(d.Date) == kind).Select(d => d.Date).ToArray();
        // A layout may be called ill without a day of it being so.
        return days.Length is 0 or 7 ? "all of it" : $"{Stretch(days)} out";
    }

    private static string Event(WeekFacts week, PlanCalendar calendar)
    {
        var days = week.Days.Where(d => calendar.KindOn(d.Date) == ExceptionKind.Event).ToArray();
        if (days.Length == 0)
            return $"{Shown.Hours(week.Hours)} ridden";
        var seconds = days.Sum(d => d.RideSeconds);
        var when = Stretch([.. days.Select(d => d.Date)]);
        var link = days.Length > 1 && when.Contains(" to ", StringComparison.Ordinal) ? "from" : "on";
        return seconds > 0 ? $"{Shown.Length(seconds)} {link} {when}" : $"no ride {link} {when}";
    }

    /// <summary>Whether the two days after the event were rest; nothing is said where they are still to come.</summary>
    private static string Recovery(WeekFacts week, PlanCalendar calendar)
    {
        var last = week.Days.LastOrDefault(d => calendar.KindOn(d.Date) == ExceptionKind.Event);
        if (last is null || last.RideSeconds <= 0)
            return "";
        var after = week.Days.Where(d => d.Date > last.Date).Take(2).ToArray();
        return after.Length < 2 ? ", and recovery comes next"
            : after.Any(d => d.IsRestOrRecovery) ? ", and rest after it"
            : "";
    }

    private static string Stretch(LocalDate[] days) => days.Length == 1 ? Shown.Weekday(days[0])
        : Period.DaysBetween(days[0], days[^1]) == days.Length - 1 ? $"{Shown.Weekday(days[0])} to {Shown.Weekday(days[^1])}"
        : Shown.List(days.Select(Shown.Weekday));
}
