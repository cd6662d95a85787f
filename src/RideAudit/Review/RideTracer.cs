using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Rides;

namespace RideAudit.Review;

/// <summary>Thins a ride's samples to what a strip can show.</summary>
internal static class RideTracer
{
    private const int MostSamples = 720;

    public static RideTrace Trace(Ride ride, RideFigures figures)
    {
        var grid = ride.Grid;
        var step = Math.Max(1, (grid.Length + MostSamples - 1) / MostSamples);
        return new RideTrace(
            step,
            figures.Power is { } power ? Thin(Means(power.Over()), step) : [],
            grid.HeartRateBpm is { } heart ? Thin(heart, step) : [],
            [.. grid.Segments.Skip(1).Select(s => s.Start)]);
    }

    private static float[] Means(TrailingPower power)
    {
        var means = new float[power.Length];
        for (var i = 0; i < means.Length; i++)
            means[i] = (float)power.MeanAt(i);
        return means;
    }

    private static ImmutableArray<float> Thin(float[] channel, int step)
    {
        var thinned = ImmutableArray.CreateBuilder<float>((channel.Length + step - 1) / step);
        for (var start = 0; start < channel.Length; start += step)
            thinned.Add((float)Channel.Mean(channel.AsSpan()[start..Math.Min(channel.Length, start + step)]));
        return thinned.ToImmutable();
    }
}
