using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Formatting;

namespace RideAudit.Review;

/// <summary>Puts the threshold in force and the second opinions beside each other.</summary>
internal static class ThresholdsWriter
{
    /// <summary>The entry; null when no ride has power or a threshold.</summary>
    /// <param name="rides">All rides up to the week's end, in order of start.</param>
    /// <param name="lastDay">The week's last day.</param>
    public static ThresholdsEntry? Write(ImmutableArray<RideFigures> rides, LocalDate lastDay)
    {
        var opinion = ThresholdOpinion.Of(rides, lastDay);
        var last = rides.LastOrDefault(r => r.Threshold is not null && r.MeanPowerW is not null) ?? rides.LastOrDefault(r => r.Threshold is not null);
        if (last is null && opinion.BestTwentyMinutes is null)
            return null;
        var entry = new ThresholdsEntry
        {
            ThresholdPowerW = last?.Threshold!.Power.Value,
            ThresholdFrom = last?.Threshold!.From,
            ThresholdEstimateW = opinion.Estimate?.Value,
            BestTwentyMinutes = opinion.BestTwentyMinutes is { } best ? Entry(best) : null,
            CriticalPowerW = opinion.Critical?.Power.Value,
            WorkAboveCriticalPowerKj = opinion.Critical?.WorkAboveJ / 1000,
            CriticalPowerEfforts = [.. opinion.Efforts.Select(Entry)],
            InForce = Steps(rides),
            Sentence = "",
        };
        return entry with { Sentence = Sentence(entry) };
    }

    private static EffortEntry Entry(PowerEffort effort) =>
        new(effort.Best.DurationSeconds, effort.Best.MeanW, effort.File, effort.Date);

    private static ImmutableArray<ThresholdStepEntry> Steps(ImmutableArray<RideFigures> rides)
    {
        var steps = ImmutableArray.CreateBuilder<ThresholdStepEntry>();
        foreach (var ride in rides)
        {
            if (ride.Threshold is not { } threshold)
                continue;
            var step = new ThresholdStepEntry(ride.Date, threshold.Power.Value, threshold.From);
            if (steps.Count == 0 || steps[^1].Source != step.Source || Math.Abs(steps[^1].PowerW - step.PowerW) >= 1)
                steps.Add(step);
        }
        return steps.ToImmutable();
    }

    private static string Sentence(ThresholdsEntry entry)
    {
        var inForce = entry.ThresholdPowerW is { } power ? $"Threshold power (FTP) in force: {Shown.Watts(power)} ({Words.OrNull(entry.ThresholdFrom)}). " : "No threshold power (FTP) is known. ";
        var estimate = entry.BestTwentyMinutes is { } best
            ? $"{Shown.Percent(95)} of the best 20\u00A0min of the last 90 days ({Shown.Iso(best.Date)}) is {Shown.Watts(entry.ThresholdEstimateW)}; "
            : "No ride of the last 90 days holds 20\u00A0min with power; ";
        var critical = entry.CriticalPowerW is { } cp
            ? $"the work–time line through {Shown.Count(entry.CriticalPowerEfforts.Length, "separate best effort")} of 3 to 20\u00A0min puts critical power at {Shown.Watts(cp)}. Both are only as good as those efforts were hard."
            : "too few separate hard efforts of 2 to 20\u00A0min for a critical power.";
        return inForce + estimate + critical;
    }
}
