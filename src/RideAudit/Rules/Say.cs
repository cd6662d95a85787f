using System.Globalization;
using NodaTime;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>Numbers, times and days as a rider would say them.</summary>
internal static class Say
{
    private static readonly string[] Weekdays = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];

    private static readonly string[] Months =
        ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

    private static readonly string[] Numbers =
        ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    public static string Day(LocalDate date) => Weekdays[(int)date.DayOfWeek - 1];

    /// <summary>A day of the week, or of the week before and then said so.</summary>
    public static string Day(LocalDate date, WeekFacts week) => date < week.StartsOn ? $"the {Day(date)} before" : Day(date);

    public static string Date(LocalDate date) => $"{date.Day.ToString(CultureInfo.InvariantCulture)} {Months[date.Month - 1]}";

    public static string List(IEnumerable<string> items)
    {
        var all = items.ToList();
        return all.Count < 2 ? string.Concat(all) : $"{string.Join(", ", all.SkipLast(1))} and {all[^1]}";
    }

    public static string Number(int count) => count >= 0 && count < Numbers.Length ? Numbers[count] : count.ToString(CultureInfo.InvariantCulture);

    /// <summary>A count with its noun: "two high days", "one ride", "no long ride".</summary>
    public static string Count(int count, string noun) => $"{Number(count)} {noun}{(count is 0 or 1 ? "" : "s")}";

    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    public static string Hours(double hours) => hours.ToString("0.0", CultureInfo.InvariantCulture) + " h";

    /// <summary>A length to the minute: "45 min", "2 h", "2 h 30 min".</summary>
    public static string Time(double seconds)
    {
        var minutes = (long)Math.Round(seconds / 60, MidpointRounding.AwayFromZero);
        return minutes < 60 ? $"{minutes} min" : minutes % 60 == 0 ? $"{minutes / 60} h" : $"{minutes / 60} h {minutes % 60} min";
    }

    public static string Percent(double share) => (share * 100).ToString("0", CultureInfo.InvariantCulture) + " %";

    public static string Decimal(double value, int decimals = 1) => value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    public static string Points(double value) => value.ToString("0", CultureInfo.InvariantCulture) + " points";
}
