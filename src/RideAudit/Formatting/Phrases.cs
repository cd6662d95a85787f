using System.Globalization;
using NodaTime;
using RideAudit.Rules;

namespace RideAudit.Formatting;

/// <summary>Numbers, lengths and days in the words of a sentence.</summary>
internal static class Phrases
{
    private static readonly string[] SmallNumbers = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

    public static string Count(double number) =>
        number >= 0 && number < SmallNumbers.Length && number == Math.Floor(number) ? SmallNumbers[(int)number] : Decimal(number, 0);

    public static string Decimal(double value, int decimals) =>
        value.To(decimals).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>A length to the minute: 45 min, 2 h, 2 h 30 min.</summary>
    public static string Length(double seconds)
    {
        var minutes = (seconds / 60).Whole();
        return (minutes / 60, minutes % 60) switch
        {
            (0, var m) => string.Create(CultureInfo.InvariantCulture, $"{m} min"),
            (var h, 0) => string.Create(CultureInfo.InvariantCulture, $"{h} h"),
            var (h, m) => string.Create(CultureInfo.InvariantCulture, $"{h} h {m} min"),
        };
    }

    public static string Day(LocalDate date) => date.DayOfWeek.ToString();

    public static string Plural(double count, string one, string many) => count == 1 ? one : many;

    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    public static string EvidenceOf(Finding finding) => Capital(Words.Of(finding.Evidence)) + ".";
}
