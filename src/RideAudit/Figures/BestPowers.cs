using System.Collections.Immutable;

namespace RideAudit.Figures;

/// <summary>Best mean power over fixed durations of timer time without missing power.</summary>
public static class BestPowers
{
    /// <summary>The durations every ride is asked for, s.</summary>
    public static IReadOnlyList<int> Durations { get; } = [5, 60, 180, 300, 720, 1200, 3600];

    /// <summary>Computes the best mean over each duration that the ride holds.</summary>
    /// <param name="powerW">Power on the grid, W, NaN where missing.</param>
    /// <param name="durations">Durations, s, above 0.</param>
    /// <returns>One entry a duration that fits somewhere; the earliest window where several are equal.</returns>
    public static ImmutableArray<BestPower> Of(float[] powerW, IReadOnlyList<int> durations)
    {
        var best = ImmutableArray.CreateBuilder<BestPower>();
        foreach (var duration in durations)
            if (Best(powerW, duration) is { } found)
                best.Add(found);
        return best.ToImmutable();
    }

    private static BestPower? Best(float[] powerW, int duration)
    {
        double sum = 0, bestSum = double.NegativeInfinity;
        int count = 0, bestEnd = -1;
        for (var i = 0; i < powerW.Length; i++)
        {
            if (float.IsNaN(powerW[i]))
            {
                (sum, count) = (0, 0);
                continue;
            }
            sum += powerW[i];
            if (count == duration)
                sum -= powerW[i - duration];
            else
                count++;
            if (count == duration && sum > bestSum)
                (bestSum, bestEnd) = (sum, i);
        }
        return bestEnd < 0 ? null : new BestPower(duration, bestSum / duration, bestEnd - duration + 1);
    }
}
