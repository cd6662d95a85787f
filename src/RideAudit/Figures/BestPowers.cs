using System.Buffers;
using System.Collections.Immutable;

namespace RideAudit.Figures;

/// <summary>Best mean power over fixed durations of timer time without missing power.</summary>
internal static class BestPowers
{
    /// <summary>The durations every ride is asked for, s.</summary>
    public static IReadOnlyList<int> Durations { get; } = [5, 60, 180, 300, 720, 1200, 3600];

    /// <summary>Computes the best mean over each duration that the ride holds.</summary>
    /// <param name="powerW">Power on the grid, W, NaN where missing.</param>
    /// <param name="durations">Durations, s, above 0.</param>
    /// <returns>One entry a duration that fits somewhere; the earliest window where several are equal.</returns>
    public static ImmutableArray<BestPower> Of(float[] powerW, IReadOnlyList<int> durations)
    {
        var totals = ArrayPool<double>.Shared.Rent(powerW.Length + 1);
        var runs = new List<(int Start, int End)>();
        totals[0] = 0;
        for (var i = 0; i < powerW.Length; i++)
        {
            var isMissing = float.IsNaN(powerW[i]);
            totals[i + 1] = totals[i] + (isMissing ? 0 : powerW[i]);
            if (isMissing)
                continue;
            if (runs.Count > 0 && runs[^1].End == i)
                runs[^1] = (runs[^1].Start, i + 1);
            else
                runs.Add((i, i + 1));
        }
        var best = ImmutableArray.CreateBuilder<BestPower>();
        foreach (var duration in durations)
            if (Best(totals, runs, duration) is { } found)
                best.Add(found);
        ArrayPool<double>.Shared.Return(totals);
        return best.ToImmutable();
    }

    private static BestPower? Best(double[] totals, List<(int Start, int End)> runs, int duration)
    {
        var (most, at) = (double.NegativeInfinity, -1);
        foreach (var (start, end) in runs)
        {
            if (end - start < duration)
                continue;
            var windows = end - start - duration + 1;
            var ends = totals.AsSpan(start + duration, windows);
            var starts = totals.AsSpan(start, windows);
            var largest = CurveSearch.LargestDifference(ends, starts);
            if (!(largest > most))
                continue;
            (most, at) = (largest, start);
            while (totals[at + duration] - totals[at] != most)
                at++;
        }
        return at < 0 ? null : new BestPower(duration, most / duration, at);
    }
}
