using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using RideAudit.Plan;

namespace RideAudit.Cli.Commands;

/// <summary>Reads the answers that <c>new-rider</c> takes, from a question or from an option: a value, or what is wrong.</summary>
internal static class RiderAnswers
{
    /// <summary>The words for experience.</summary>
    public static ImmutableArray<(string Word, Experience Value)> ExperienceWords { get; } =
        [("new", Plan.Experience.New), ("regular", Plan.Experience.Regular), ("racing", Plan.Experience.Racing)];

    /// <summary>Threshold power, W.</summary>
    public static (double? Value, string? Wrong) ThresholdPower(string text) => Number(text, RiderFileRanges.ThresholdPower, "W");

    /// <summary>Threshold heart rate, bpm.</summary>
    public static (double? Value, string? Wrong) ThresholdHeartRate(string text) => Number(text, RiderFileRanges.ThresholdHeartRate, "bpm");

    /// <summary>Planned hours, h.</summary>
    public static (double? Value, string? Wrong) WeeklyHours(string text) => Number(text, RiderFileRanges.WeeklyHours, "h");

    /// <summary>An IANA time zone.</summary>
    public static (string? Value, string? Wrong) TimeZone(string text) =>
        DateTimeZoneProviders.Tzdb.Ids.Contains(text.Trim())
            ? (text.Trim(), null)
            : (null, $"'{text}' is no IANA time zone. Write it as Europe/Lisbon or America/New_York.");

    /// <summary>Experience.</summary>
    public static (Experience? Value, string? Wrong) Experience(string text)
    {
        foreach (var (word, value) in ExperienceWords)
            if (word.Equals(text.Trim(), StringComparison.OrdinalIgnoreCase))
                return (value, null);
        return (null, $"'{text}' is none of new, regular, racing.");
    }

    /// <summary>Days of the week, in the week's order, each named in full or by its first three letters.</summary>
    public static (ImmutableArray<IsoDayOfWeek> Value, string? Wrong) Days(string text)
    {
        var days = new SortedSet<IsoDayOfWeek>();
        foreach (var word in text.Split([',', ';', ' '], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var day = Enumerable.Range(1, 7).Select(n => (IsoDayOfWeek)n).FirstOrDefault(d =>
                word.Length >= 3 && d.ToString().StartsWith(word, StringComparison.OrdinalIgnoreCase));
            if (day == IsoDayOfWeek.None)
                return ([], $"'{word}' is no day of the week. Write them as tuesday,thursday,saturday.");
            days.Add(day);
        }
        return ([.. days], null);
    }

    private static (double? Value, string? Wrong) Number(string text, (double Least, double Most) range, string unit)
    {
        var bare = text.Trim().Replace(',', '.');
        if (bare.EndsWith(unit, StringComparison.OrdinalIgnoreCase))
            bare = bare[..^unit.Length].TrimEnd();
        if (!double.TryParse(bare, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
            return (null, $"'{text}' is not a number.");
        return number >= range.Least && number <= range.Most
            ? (number, null)
            : (null, string.Create(CultureInfo.InvariantCulture, $"{number} {unit} is outside {range.Least} to {range.Most} {unit}."));
    }
}
