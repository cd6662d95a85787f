using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Finds the stretches at or above a share of threshold power on the trailing 30 s mean.</summary>
/// <remarks>Runs at most 15 s apart are joined and the dip counts; runs under 60 s are dropped; a pause or missing power ends a run. Common practice, no source.</remarks>
internal static class SustainedPower
{
    /// <summary>Runs this far apart or nearer are one, s.</summary>
    public const int LongestDipSeconds = 15;

    /// <summary>Runs shorter than this are dropped, s.</summary>
    public const int ShortestRunSeconds = 60;

    /// <summary>Computes the time above a share.</summary>
    /// <param name="trailing">Trailing 30 s power.</param>
    /// <param name="threshold">Threshold power, W, above 0.</param>
    public static SustainedTime Of(TrailingPower trailing, Watts threshold, double sharePercent)
    {
        var runs = TrailingStretches.Find(trailing, threshold, sharePercent, LongestDipSeconds, ShortestRunSeconds);
        return new SustainedTime(sharePercent, runs.Sum(r => r.End - r.Start), runs);
    }
}
