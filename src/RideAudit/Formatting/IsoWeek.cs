using System.Globalization;
using NodaTime;
using NodaTime.Calendars;

namespace RideAudit.Formatting;

/// <summary>A week of ISO 8601: it starts on Monday, and week 1 holds 4 January.</summary>
/// <param name="Year">The week's year, which may differ from its first day's.</param>
/// <param name="Number">1 to 53.</param>
public readonly record struct IsoWeek(int Year, int Number)
{
    /// <summary>The week that starts on a Monday; null for any other first day.</summary>
    /// <param name="startsOn">The week's first day.</param>
    public static IsoWeek? StartingOn(LocalDate startsOn) => startsOn.DayOfWeek == IsoDayOfWeek.Monday
        ? new IsoWeek(WeekYearRules.Iso.GetWeekYear(startsOn), WeekYearRules.Iso.GetWeekOfWeekYear(startsOn))
        : null;

    /// <summary>The week's Monday.</summary>
    public LocalDate StartsOn => WeekYearRules.Iso.GetLocalDate(Year, Number, IsoDayOfWeek.Monday);

    /// <summary>Such as <c>2026-W19</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Year:0000}-W{Number:00}");
}
