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
    public static ImmutableArray<BestPower> Of(ReadOnlySpan<float> powerW, IReadOnlyList<int> durations)
    {
        using var totals = new RunningTotals(powerW);
        var best = ImmutableArray.CreateBuilder<BestPower>();
        foreach (var duration in durations)
            if (Most(totals, duration) is var (most, run))
                best.Add(new BestPower(duration, most / duration, Where(totals.Totals, most, run, duration)));
        return best.ToImmutable();
    }

    /// <summary>The best mean over one duration alone, W; null where no window of it fits. Where the window lies is not looked for.</summary>
    /// <param name="totals">The ride's running totals.</param>
    /// <param name="duration">The duration, s, above 0.</param>
    internal static double? MeanOf(in RunningTotals totals, int duration) => Most(totals, duration)?.Sum / duration;

    private static (double Sum, int Run)? Most(in RunningTotals totals, int duration)
    {
        var (most, at) = (double.NegativeInfinity, -1);
        foreach (var (start, end) in totals.Runs)
        {
            if (end - start < duration)
                continue;
            var windows = end - start - duration + 1;
            var largest = CurveSearch.LargestDifference(totals.Totals.Slice(start + duration, windows), totals.Totals.Slice(start, windows));
            if (largest > most)
                (most, at) = (largest, start);
        }
        return at < 0 ? null : (most, at);
    }

    private static int Where(ReadOnlySpan<double> totals, double most, int start, int duration)
    {
        var at = start;
        while (totals[at + duration] - totals[at] != most)
            at++;
        return at;
    }
}
