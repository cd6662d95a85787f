using System.Globalization;
using NodaTime;
using NodaTime.Calendars;

namespace RideAudit.Formatting;

/// <summary>ISO 8601 week names.</summary>
public static class IsoWeek
{
    /// <summary>The name of the week that starts on a Monday, such as <c>2026-W19</c>; null for any other first day.</summary>
    /// <param name="startsOn">The week's first day.</param>
    public static string? Name(LocalDate startsOn)
    {
        if (startsOn.DayOfWeek != IsoDayOfWeek.Monday)
            return null;
        var rule = WeekYearRules.Iso;
        return string.Create(CultureInfo.InvariantCulture, $"{rule.GetWeekYear(startsOn):0000}-W{rule.GetWeekOfWeekYear(startsOn):00}");
    }
}
