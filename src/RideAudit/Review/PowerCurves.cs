using System.Collections.Immutable;
using RideAudit.Figures;

namespace RideAudit.Review;

/// <summary>The whole best-mean-power curve of a ride, as the document holds it.</summary>
internal static class PowerCurves
{
    /// <summary>Best mean power, W, from 1 s on; null where power is missing or not used.</summary>
    /// <param name="figures">The ride's figures.</param>
    public static ImmutableArray<double>? Of(RideFigures figures)
    {
        if (figures.Power is not { } power)
            return null;
        using var samples = power.Samples.Lend();
        var curve = PowerCurve.Of(samples.Span);
        var means = ImmutableArray.CreateBuilder<double>(curve.LongestSeconds);
        for (var seconds = 1; seconds <= curve.LongestSeconds; seconds++)
            means.Add(curve.At(seconds).MeanW);
        return means.MoveToImmutable();
    }
}
