using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using RideAudit.Rides;

namespace RideAudit.Figures;

/// <summary>The steady easy stretches of a ride: five minutes without a pause, ridden evenly below the middle band, with the heart rate they took.</summary>
/// <remarks>
/// Power at the same easy heart rate is common practice, no source; the windows are our choice. The first ten minutes are left out, as for
/// heart-rate drift; a window counts when every second has power and heart rate, its mean power is below the middle band, and its 30 s means
/// stray by at most a tenth of it.
/// </remarks>
internal static class SteadyEasy
{
    private const int LeftOutSeconds = 600;
    private const int WindowSeconds = 300;
    private const double MostStray = 0.10;

    // A season is looked through at every review, and its rides seldom change from one to the next.
    private static readonly ConditionalWeakTable<RideFigures, StrongBox<ImmutableArray<Stretch>>> Known = [];

    /// <summary>The stretches, in order.</summary>
    /// <param name="ride">A ride with power, heart rate and a threshold power; others have none.</param>
    /// <param name="grid">Its samples.</param>
    public static ImmutableArray<Stretch> Of(RideFigures ride, SampleGrid grid) =>
        Known.GetValue(ride, r => new StrongBox<ImmutableArray<Stretch>>(Read(r, grid))).Value;

    private static ImmutableArray<Stretch> Read(RideFigures ride, SampleGrid grid)
    {
        if (ride.Power is not { } power || grid.HeartRateBpm is not { } heartRate || ride.Threshold is not { } threshold || ride.Cuts is not { } cuts
            || ride.MeasuredBy != MeasureSource.Power)
            return [];
        var below = cuts.LowerPercent / 100 * threshold.Power.Value;
        var stretches = ImmutableArray.CreateBuilder<Stretch>();
        using var trailing = power.Over();
        using var samples = power.Samples.Lend();
        using var heart = heartRate.Lend();
        foreach (var segment in grid.Segments)
        {
            for (var start = Math.Max(segment.Start, LeftOutSeconds); start + WindowSeconds <= segment.End; start += WindowSeconds)
            {
                if (Read(samples.Span, trailing, heart.Span, start) is { } stretch && stretch.PowerW < below)
                    stretches.Add(stretch);
            }
        }
        return stretches.ToImmutable();
    }

    private static Stretch? Read(ReadOnlySpan<float> power, TrailingPower trailing, ReadOnlySpan<float> heart, int start)
    {
        var watts = power.Slice(start, WindowSeconds);
        var beats = heart.Slice(start, WindowSeconds);
        if (HasGap(watts) || HasGap(beats))
            return null;
        double mean = Channel.Mean(watts), stray = 0;
        var from = start + TrailingPower.WindowSeconds;
        for (var second = from; second < start + WindowSeconds; second++)
        {
            var off = trailing.MeanAt(second) - mean;
            stray += off * off;
        }
        stray = Math.Sqrt(stray / (WindowSeconds - TrailingPower.WindowSeconds));
        return mean > 0 && stray <= MostStray * mean ? new Stretch(mean, Channel.Mean(beats)) : null;
    }

    private static bool HasGap(ReadOnlySpan<float> channel)
    {
        foreach (var value in channel)
            if (float.IsNaN(value))
                return true;
        return false;
    }

    /// <summary>One stretch.</summary>
    /// <param name="PowerW">Mean power, W.</param>
    /// <param name="HeartRateBpm">Mean heart rate, bpm.</param>
    internal readonly record struct Stretch(double PowerW, double HeartRateBpm);
}
