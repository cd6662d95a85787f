using NodaTime;
using RideAudit.Formatting;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>Days as a sentence about a week names them.</summary>
internal static class DayNames
{
    /// <summary>A day of the week at a sentence's start, or of the week before and then said so.</summary>
    public static string In(WeekFacts week, LocalDate date) => date < week.StartsOn ? $"The {Shown.Weekday(date)} before" : Shown.Weekday(date);
}
