using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace RideAudit.Report.Words;

/// <summary>Figures and dates in print. Rounds for reading, computes nothing.</summary>
internal static class Say
{
    /// <summary>Keeps a figure and its unit on one line.</summary>
    public const string Joint = "\u00A0";

    /// <summary>Printed where a figure is missing.</summary>
    public const string Missing = "–";

    private static readonly LocalDatePattern ShortPattern = Pattern("ddd d");
    private static readonly LocalDatePattern DayPattern = Pattern("ddd d MMMM");
    private static readonly LocalDatePattern DatePattern = Pattern("d MMMM yyyy");
    private static readonly LocalDatePattern MonthPattern = Pattern("d MMM");
    private static readonly LocalTimePattern TimePattern = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    /// <summary>A number with a true minus sign.</summary>
    public static string Number(double value, int decimals = 0)
    {
        string text = Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString("F" + decimals, CultureInfo.InvariantCulture);
        if (text.StartsWith('-') && text.All(c => c is '-' or '0' or '.'))
            text = text[1..];
        return text.Replace('-', '−');
    }

    /// <summary>A number, or a dash when it is missing.</summary>
    public static string Number(double? value, int decimals = 0) => value is { } known ? Number(known, decimals) : Missing;

    /// <summary>A change, with its sign.</summary>
    public static string Change(double value, int decimals = 1)
    {
        string text = Number(value, decimals);
        return value > 0 && text.Any(c => c is >= '1' and <= '9') ? "+" + text : text;
    }

    /// <summary>A number and its unit.</summary>
    public static string Unit(double value, int decimals, string unit) => Number(value, decimals) + Joint + unit;

    /// <summary>A share as whole per cent.</summary>
    public static string Percent(double share, int decimals = 0) => Number(share * 100, decimals) + Joint + "%";

    /// <summary>A share in per cent, with a decimal only where it has one: <c>15 %</c>, <c>59.5 %</c>.</summary>
    public static string Share(double share) => Percent(share, Math.Abs((share * 100) - Math.Round(share * 100)) < 0.001 ? 0 : 1);

    /// <summary>A number with the decimals it has, two at most: <c>3</c>, <c>22.9</c>, <c>1.13</c>.</summary>
    public static string Plain(double value)
    {
        double shown = Math.Round(value, 2, MidpointRounding.AwayFromZero);
        return Number(shown, shown == Math.Round(shown) ? 0 : shown == Math.Round(shown, 1) ? 1 : 2);
    }

    /// <summary>A length of time as the rules word it: <c>59 min</c>, <c>1 h</c>, <c>2 h 30 min</c>.</summary>
    public static string Length(double seconds)
    {
        long minutes = (long)Math.Round(seconds / 60, MidpointRounding.AwayFromZero);
        string rest = minutes >= 60 && minutes % 60 == 0 ? "" : $"{minutes % 60}{Joint}min";
        return minutes < 60 ? rest : $"{minutes / 60}{Joint}h{(rest.Length > 0 ? Joint : "")}{rest}";
    }

    /// <summary>A short length of time: <c>5 s</c>, <c>20 min</c>.</summary>
    public static string Window(int seconds) => seconds < 60 ? $"{seconds}{Joint}s" : $"{seconds / 60}{Joint}min";

    /// <summary><c>Tue 9</c>.</summary>
    public static string ShortDay(LocalDate date) => ShortPattern.Format(date).Replace(" ", Joint, StringComparison.Ordinal);

    /// <summary><c>Tue 9 June</c>.</summary>
    public static string Day(LocalDate date) => DayPattern.Format(date);

    /// <summary><c>9 June 2026</c>.</summary>
    public static string Date(LocalDate date) => DatePattern.Format(date);

    /// <summary><c>9 Jun</c>.</summary>
    public static string Month(LocalDate date) => MonthPattern.Format(date);

    /// <summary><c>18:05</c>.</summary>
    public static string Time(LocalTime time) => TimePattern.Format(time);

    /// <summary>With a capital first letter.</summary>
    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>A count and its noun.</summary>
    public static string Count(int count, string noun) => count == 1 ? $"1{Joint}{noun}" : $"{count}{Joint}{noun}s";

    private static LocalDatePattern Pattern(string text) => LocalDatePattern.CreateWithInvariantCulture(text);
}
