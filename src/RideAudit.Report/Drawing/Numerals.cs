namespace RideAudit.Report.Drawing;

/// <summary>Numbers as the files of the makers hold them: at most two decimals, a point, no exponent, the same on every system.</summary>
internal static class Numerals
{
    /// <summary>A number rounded to hundredths.</summary>
    public static string Plain(double value)
    {
        var hundredths = (long)Math.Round(value * 100, MidpointRounding.AwayFromZero);
        var sign = hundredths < 0 ? "-" : "";
        (var whole, var rest) = Math.DivRem(Math.Abs(hundredths), 100);
        return rest == 0 ? $"{sign}{whole}" : $"{sign}{whole}.{(rest % 10 == 0 ? $"{rest / 10}" : $"{rest:00}")}";
    }
}
