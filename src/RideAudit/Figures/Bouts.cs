using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Finds short hard efforts on the trailing 5 s mean: sprints and short repeats, which 30 s means hide.</summary>
/// <remarks>Dips of at most 2 s count; a pause or missing power ends a bout. Common practice, no source.</remarks>
internal static class Bouts
{
    /// <summary>The window of the mean, s.</summary>
    public const int WindowSeconds = 5;

    /// <summary>Dips this long or shorter belong to a bout, s.</summary>
    public const int LongestDipSeconds = 2;

    /// <summary>Counts the bouts.</summary>
    /// <param name="trailing">Trailing 5 s power.</param>
    /// <param name="threshold">Threshold power, W, above 0.</param>
    /// <param name="shortestSeconds">Shorter ones are none, s.</param>
    /// <returns>How many, and their seconds in all.</returns>
    public static (int Count, double Seconds) Of(TrailingPower trailing, Watts threshold, double sharePercent, double shortestSeconds)
    {
        var bouts = TrailingStretches.Find(trailing, threshold, sharePercent, LongestDipSeconds, shortestSeconds);
        return (bouts.Count, bouts.Sum(b => b.End - b.Start));
    }
}
