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
        var power = SpikeFilter.Clean(grid, figures.Threshold?.Power) is var (cleaned, _) && figures.MeanPowerW is not null
            ? TrailingPower.Of(cleaned, grid.Segments)
            : null;
        return new RideTrace(
            step,
            power is null ? [] : Thin(grid.Length, step, i => (float)power.MeanAt(i)),
            grid.HeartRateBpm is { } heart ? Thin(grid.Length, step, i => heart[i]) : [],
            [.. grid.Segments.Skip(1).Select(s => s.Start)]);
    }

    private static ImmutableArray<float> Thin(int length, int step, Func<int, float> value)
    {
        var thinned = ImmutableArray.CreateBuilder<float>((length + step - 1) / step);
        for (var start = 0; start < length; start += step)
        {
            double sum = 0;
            var count = 0;
            for (var i = start; i < Math.Min(length, start + step); i++)
            {
                var v = value(i);
                if (float.IsNaN(v))
                    continue;
                sum += v;
                count++;
            }
            thinned.Add(count == 0 ? float.NaN : (float)(sum / count));
        }
        return thinned.ToImmutable();
    }
}
