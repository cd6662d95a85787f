using RideAudit.Document;
using RideAudit.Units;

namespace RideAudit.Review;

/// <summary>Puts a week's intensity distribution in one number and one word.</summary>
/// <remarks>
/// Polarization index log10(z1 ÷ z2 × z3 × 100), shares as fractions; polarized above 2.00 with z1 > z3 > z2:
/// Treff, Winkert, Sareban, Steinacker and Sperlich 2019, Front Physiol 10:707 (found). Their rules for zero shares are only
/// from memory, so the index is left out where a share is 0 or the high share exceeds the low one.
/// </remarks>
internal static class IntensityStructure
{
    /// <summary>The polarization index; null where the shares do not allow it.</summary>
    /// <param name="bands">Seconds in the bands.</param>
    public static double? PolarizationIndex(BandSeconds bands)
    {
        if (bands.Low <= 0 || bands.Middle <= 0 || bands.High <= 0 || bands.High > bands.Low)
            return null;
        // In seconds: (low/total) ÷ (middle/total) × (high/total) × 100, with one division.
        return Math.Log10(bands.Low * bands.High * 100 / (bands.Middle * bands.Total));
    }

    /// <summary>The structure; null without banded time.</summary>
    /// <param name="bands">Seconds in the bands.</param>
    public static WeekStructure? Of(BandSeconds bands)
    {
        if (bands.Total <= 0)
            return null;
        if (bands.AboveLow == 0)
            return WeekStructure.AllLow;
        if (bands.Low > bands.High && bands.High > bands.Middle)
            return PolarizationIndex(bands) is null or > 2 ? WeekStructure.Polarized : WeekStructure.Mixed;
        if (bands.Low > bands.Middle && bands.Middle >= bands.High)
            return WeekStructure.Pyramidal;
        return bands.High >= bands.Middle ? WeekStructure.MostlyHigh : WeekStructure.MostlyMiddle;
    }
}
