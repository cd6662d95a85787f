using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;
using NodaTime.Text;
using RideAudit.Formatting;
using RideAudit.Rules;

namespace RideAudit.Tests.Advice;

/// <summary>Reads figures back as a review prints them.</summary>
internal static partial class Printed
{
    /// <summary>A length of time, s.</summary>
    public static double Seconds(string text)
    {
        var match = LengthWords().Match(text);
        return 3600 * Number(match.Groups["h"]) + 60 * Number(match.Groups["min"]);
    }

    /// <summary>A whole number in words or figures.</summary>
    public static int Count(string text) => int.TryParse(text, CultureInfo.InvariantCulture, out var figures) ? figures
        : Enumerable.Range(0, 13).Single(n => string.Equals(Shown.InWords(n), text, StringComparison.OrdinalIgnoreCase));

    public static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    /// <summary>Days of a week by their names.</summary>
    public static LocalDate[] Days(string text, WeekUnderReview week) =>
        [.. DayName().Matches(text).Select(m => Day(m.Value, week))];

    public static LocalDate Day(string name, WeekUnderReview week) =>
        week.Week.Days.Single(d => d.Date.DayOfWeek.ToString() == name).Date;

    /// <summary>A day and month, of the year that puts it nearest before the week's end.</summary>
    public static LocalDate Date(string text, WeekUnderReview week)
    {
        var end = week.Week.EndsOn;
        var date = LocalDatePattern.CreateWithInvariantCulture("d MMMM").WithTemplateValue(new LocalDate(end.Year, 1, 1)).Parse(text).Value;
        return date > end ? date.PlusYears(-1) : date;
    }

    private static double Number(Group group) => group.Success ? Number(group.Value) : 0;

    [GeneratedRegex(@"^(?:(?<h>\d+) h ?)?(?:(?<min>\d+) min)?$")]
    private static partial Regex LengthWords();

    [GeneratedRegex(@"(Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day")]
    private static partial Regex DayName();
}
