using System.Collections.Immutable;
using RideAudit.Figures;
using RideAudit.Rides;

namespace RideAudit.Review;

/// <summary>The whole best-mean-power curve of a ride, as the document holds it.</summary>
internal static class PowerCurves
{
    /// <summary>Best mean power, W, from 1 s on; null where power is missing or not used.</summary>
    /// <param name="ride">The ride.</param>
    /// <param name="figures">Its figures.</param>
    public static ImmutableArray<double>? Of(Ride ride, RideFigures figures)
    {
        if (figures.MeanPowerW is null || SpikeFilter.Clean(ride.Grid, figures.Threshold?.Power) is not var (power, _))
            return null;
        var curve = PowerCurve.Of(power);
        var means = ImmutableArray.CreateBuilder<double>(curve.LongestSeconds);
        for (var seconds = 1; seconds <= curve.LongestSeconds; seconds++)
            means.Add(curve.At(seconds).MeanW);
        return means.MoveToImmutable();
    }
}
