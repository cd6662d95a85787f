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
            figures.Power is { } power ? Means(power, step) : [],
            grid.HeartRateBpm is { } heart ? Thin(heart, step) : [],
            [.. grid.Segments.Skip(1).Select(s => s.Start)]);
    }

    private static ImmutableArray<float> Means(CleanPower power, int step)
    {
        using var trailing = power.Over();
        using var means = new Lent<float>(trailing.Length);
        for (var i = 0; i < trailing.Length; i++)
            means.Span[i] = (float)trailing.MeanAt(i);
        return Thin(means.Span, step);
    }

    private static ImmutableArray<float> Thin(PackedSamples channel, int step)
    {
        using var samples = channel.Lend();
        return Thin(samples.Span, step);
    }

    private static ImmutableArray<float> Thin(ReadOnlySpan<float> channel, int step)
    {
        var thinned = ImmutableArray.CreateBuilder<float>((channel.Length + step - 1) / step);
        for (var start = 0; start < channel.Length; start += step)
            thinned.Add((float)Channel.Mean(channel[start..Math.Min(channel.Length, start + step)]));
        return thinned.ToImmutable();
    }
}
