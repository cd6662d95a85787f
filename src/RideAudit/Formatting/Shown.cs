using System.Globalization;

namespace RideAudit.Formatting;

/// <summary>The one place where a figure becomes text, in every output.</summary>
/// <remarks>
/// Give it the unrounded value: it rounds once, halves away from zero. The text is the same in every culture, a minus is a true minus sign,
/// and a no-break space stands between a figure and its unit, so that no line ends between them.
/// </remarks>
public static partial class Shown
{
    /// <summary>Stands between a figure and its unit: U+00A0.</summary>
    public const string Joint = "\u00A0";

    /// <summary>Stands where a figure is missing.</summary>
    public const string Missing = "–";

    private static readonly CultureInfo Culture = CultureInfo.InvariantCulture;

    /// <summary>A number with so many decimals: <c>251</c>, <c>−3.5</c>.</summary>
    /// <param name="value">Unrounded; what is not finite is missing.</param>
    /// <param name="decimals">0 to 15.</param>
    public static string Number(double value, int decimals = 0) =>
        double.IsFinite(value) ? Data(value, decimals).Replace('-', '−') : Missing;

    /// <summary>A number; a dash for null.</summary>
    /// <param name="value">Unrounded.</param>
    /// <param name="decimals">0 to 15.</param>
    public static string Number(double? value, int decimals = 0) => value is { } known ? Number(known, decimals) : Missing;

    /// <summary>A change with its sign: <c>+3.5</c>, <c>−3.5</c>, <c>0.0</c> when it rounds to nothing; a dash for null.</summary>
    /// <param name="value">Unrounded.</param>
    /// <param name="decimals">0 to 15.</param>
    public static string Signed(double? value, int decimals = 1) =>
        value is { } known && known.To(decimals) > 0 ? "+" + Number(known, decimals) : Number(value, decimals);

    /// <summary>A number with the decimals it has, two at most: <c>3</c>, <c>22.9</c>, <c>1.13</c>.</summary>
    /// <param name="value">Unrounded.</param>
    public static string Plain(double value) => Number(value, DecimalsOf(value, most: 2));

    /// <summary>A number for a program, as in CSV: a point, a hyphen for minus; empty for null and what is not finite.</summary>
    /// <param name="value">Unrounded.</param>
    /// <param name="decimals">0 to 15.</param>
    public static string Data(double? value, int decimals) =>
        value is { } known && double.IsFinite(known) ? known.To(decimals).ToString("F" + decimals.ToString(Culture), Culture) : "";

    /// <summary>A number and its unit: <c>3.5 kg</c>; a dash alone for null.</summary>
    /// <param name="value">Unrounded.</param>
    /// <param name="unit">As it is printed.</param>
    /// <param name="decimals">0 to 15.</param>
    public static string Quantity(double? value, string unit, int decimals = 0) =>
        value is { } known && double.IsFinite(known) ? Number(known, decimals) + Joint + unit : Missing;

    /// <summary>Two ends and their unit: <c>140 to 160 W</c>; one figure where both round to the same.</summary>
    /// <param name="from">Lower end, unrounded.</param>
    /// <param name="to">Upper end, unrounded.</param>
    /// <param name="unit">As it is printed.</param>
    /// <param name="decimals">0 to 15.</param>
    public static string Range(double from, double to, string unit, int decimals = 0) =>
        from.To(decimals) == to.To(decimals) ? Quantity(to, unit, decimals) : $"{Number(from, decimals)}{Joint}to{Joint}{Quantity(to, unit, decimals)}";

    /// <summary>Hours: <c>6.2 h</c>.</summary>
    /// <param name="hours">Unrounded, h.</param>
    /// <param name="decimals">One in sentences and tables; two where hours are added up.</param>
    public static string Hours(double? hours, int decimals = 1) => Quantity(hours, "h", decimals);

    /// <summary>Minutes: <c>45 min</c>.</summary>
    /// <param name="minutes">Unrounded, min.</param>
    public static string Minutes(double? minutes) => Quantity(minutes, "min");

    /// <summary>A length of time in a sentence, to the minute: <c>45 min</c>, <c>2 h</c>, <c>2 h 30 min</c>.</summary>
    /// <param name="seconds">Unrounded, s.</param>
    public static string Length(double seconds)
    {
        var (hours, minutes) = Split(seconds);
        return (hours, minutes) switch
        {
            (0, _) => Minutes(minutes),
            (_, 0) => Quantity(hours, "h"),
            _ => Quantity(hours, "h") + Joint + Minutes(minutes),
        };
    }

    /// <summary>A length of time in a table, written as in a sentence; a dash for null.</summary>
    /// <param name="seconds">Unrounded, s.</param>
    public static string TableLength(double? seconds) => seconds is { } known && double.IsFinite(known) ? Length(known) : Missing;

    /// <summary>A window that figures are looked for over: <c>5 s</c>, <c>20 min</c>.</summary>
    /// <param name="seconds">Whole, s.</param>
    public static string Window(int seconds) => seconds < 60 ? Quantity(seconds, "s") : Minutes(seconds / 60);

    /// <summary>A point of a ride: <c>1:05:00</c>.</summary>
    /// <param name="seconds">Seconds from the ride's start.</param>
    public static string Clock(int seconds) => string.Create(Culture, $"{seconds / 3600}:{seconds / 60 % 60:00}:{seconds % 60:00}");

    /// <summary>A share as a percentage: <c>76 %</c>; a dash for null.</summary>
    /// <param name="share">Unrounded, 1 is all.</param>
    /// <param name="decimals">Decimals of the percentage.</param>
    public static string Share(double? share, int decimals = 0) => Percent(share * 100, decimals);

    /// <summary>A share as a percentage with a decimal only where it has one, as limits are given: <c>15 %</c>, <c>59.5 %</c>.</summary>
    /// <param name="share">Unrounded, 1 is all.</param>
    public static string PlainShare(double share) => Percent(share * 100, DecimalsOf(share * 100, most: 1));

    /// <summary>A percentage that is one already: <c>3.2 %</c>; a dash for null.</summary>
    /// <param name="percent">Unrounded, 100 is all.</param>
    /// <param name="decimals">Decimals of the percentage.</param>
    public static string Percent(double? percent, int decimals = 0) => Quantity(percent, "%", decimals);

    /// <summary>Points of stress or load: <c>1 point</c>, <c>620 points</c>; a dash for null.</summary>
    /// <param name="points">Unrounded.</param>
    /// <param name="decimals">0 in most places.</param>
    public static string Points(double? points, int decimals = 0) =>
        Quantity(points, points is { } known && Number(known, decimals) == "1" ? "point" : "points", decimals);

    /// <summary>Power: <c>251 W</c>; a dash for null.</summary>
    /// <param name="watts">Unrounded, W.</param>
    public static string Watts(double? watts) => Quantity(watts, "W");

    /// <summary>Heart rate: <c>142 bpm</c>; a dash for null.</summary>
    /// <param name="bpm">Unrounded, beats a minute.</param>
    public static string HeartRate(double? bpm) => Quantity(bpm, "bpm");

    /// <summary>Work: <c>1840 kJ</c>; a dash for null.</summary>
    /// <param name="kilojoules">Unrounded, kJ.</param>
    /// <param name="decimals">0 in most places.</param>
    public static string Work(double? kilojoules, int decimals = 0) => Quantity(kilojoules, "kJ", decimals);

    /// <summary>Distance: <c>61.4 km</c>; a dash for null.</summary>
    /// <param name="kilometres">Unrounded, km.</param>
    public static string Distance(double? kilometres) => Quantity(kilometres, "km", 1);

    private static (long Hours, long Minutes) Split(double seconds)
    {
        var minutes = (seconds / 60).Whole();
        return (minutes / 60, minutes % 60);
    }

    /// <summary>How many decimals a value has, as far as they are shown.</summary>
    private static int DecimalsOf(double value, int most)
    {
        var shown = value.To(most);
        for (var decimals = 0; decimals < most; decimals++)
        {
            if (shown.To(decimals) == shown)
                return decimals;
        }
        return most;
    }
}
