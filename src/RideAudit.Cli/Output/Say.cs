using System.Globalization;
using NodaTime;
using NodaTime.Text;
using RideAudit.Formatting;
using RideAudit.Rules;

namespace RideAudit.Cli.Output;

/// <summary>Numbers, dates and verdicts as the review writes them.</summary>
internal static class Say
{
    /// <summary>Printed where a figure is missing.</summary>
    public const string Missing = "–";

    private const string Joint = "\u00A0";
    private static readonly CultureInfo Culture = CultureInfo.InvariantCulture;
    private static readonly LocalDatePattern LongDate = LocalDatePattern.CreateWithInvariantCulture("d MMMM uuuu");
    private static readonly LocalDatePattern DayOfMonth = LocalDatePattern.CreateWithInvariantCulture("ddd d");
    private static readonly LocalDatePattern DayDate = LocalDatePattern.CreateWithInvariantCulture("ddd uuuu-MM-dd");
    private static readonly LocalTimePattern HourMinute = LocalTimePattern.CreateWithInvariantCulture("HH:mm");
    private static readonly LocalDateTimePattern Minute = LocalDateTimePattern.CreateWithInvariantCulture("ddd uuuu-MM-dd HH:mm");

    /// <summary>Such as <c>4 May 2026</c>.</summary>
    public static string Date(LocalDate date) => LongDate.Format(date);

    /// <summary>Such as <c>2026-05-04</c>.</summary>
    public static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);

    /// <summary>Such as <c>Mon 4</c>.</summary>
    public static string Day(LocalDate date) => DayOfMonth.Format(date);

    /// <summary>Such as <c>Tue 2026-05-05</c>.</summary>
    public static string DayAndDate(LocalDate date) => DayDate.Format(date);

    /// <summary>Such as <c>18:00</c>.</summary>
    public static string Time(OffsetDateTime start) => HourMinute.Format(start.TimeOfDay);

    /// <summary>Such as <c>Tue 2026-05-05 18:00</c>.</summary>
    public static string Start(OffsetDateTime start) => Minute.Format(start.LocalDateTime);

    /// <summary>Such as <c>2 h 30</c> or <c>59 min</c>.</summary>
    /// <param name="seconds">Unrounded, s.</param>
    public static string Duration(double seconds)
    {
        var minutes = (long)Math.Round(seconds / 60, MidpointRounding.AwayFromZero);
        return minutes < 60 ? $"{minutes}{Joint}min" : string.Create(Culture, $"{minutes / 60}{Joint}h{Joint}{minutes % 60:00}");
    }

    /// <summary>A number with so many decimals and a true minus sign; a dash when missing.</summary>
    public static string Number(double? value, int decimals = 0)
    {
        if (value is not { } number)
            return Missing;
        var rounded = Math.Round(Math.Abs(number), decimals, MidpointRounding.AwayFromZero);
        var text = rounded.ToString("F" + decimals.ToString(Culture), Culture);
        return number < 0 && rounded > 0 ? "−" + text : text;
    }

    /// <summary>As <see cref="Number"/>, with a plus sign where above 0.</summary>
    public static string Signed(double? value, int decimals)
    {
        var text = Number(value, decimals);
        return value > 0 && text.Any(c => c is >= '1' and <= '9') ? "+" + text : text;
    }

    /// <summary>A share such as <c>75 %</c>; a dash when missing.</summary>
    /// <param name="share">0 to 1.</param>
    /// <param name="decimals">Decimals of the percentage.</param>
    public static string Percent(double? share, int decimals = 0) => share is { } s ? Number(100 * s, decimals) + Joint + "%" : Missing;

    /// <summary>A count with its noun, such as <c>1 file</c> or <c>3 files</c>.</summary>
    /// <param name="count">The count.</param>
    /// <param name="noun">The noun for one.</param>
    /// <param name="plural">The noun for several; with an s when null.</param>
    public static string Count(long count, string noun, string? plural = null) =>
        string.Create(Culture, $"{count} {(count == 1 ? noun : plural ?? noun + "s")}");

    /// <summary>What a rule rests on and its source, without saying the same twice.</summary>
    public static string Grounds(Evidence evidence, string source)
    {
        var grade = Words.Of(evidence);
        return Sentence(source.StartsWith(grade, StringComparison.OrdinalIgnoreCase) ? source : $"{grade}: {source}");
    }

    /// <summary>A short length of time, such as <c>5 s</c> or <c>20 min</c>.</summary>
    public static string Window(int seconds) => seconds < 60 ? Number(seconds) + Joint + "s" : Number(seconds / 60) + Joint + "min";

    /// <summary>A point of a ride, such as <c>1:05:00</c>.</summary>
    public static string Clock(int seconds) => string.Create(Culture, $"{seconds / 3600}:{seconds / 60 % 60:00}:{seconds % 60:00}");

    /// <summary>A time of day, such as <c>18:05:09</c>.</summary>
    public static string Clock(LocalTime time) => LocalTimePattern.ExtendedIso.Format(time.With(TimeAdjusters.TruncateToSecond));

    /// <summary>With a capital first letter and a full stop.</summary>
    public static string Sentence(string text) =>
        text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..] + (text.EndsWith('.') ? "" : ".");
}
