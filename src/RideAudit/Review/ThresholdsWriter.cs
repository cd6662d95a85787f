using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using NodaTime.Text;
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
            ThresholdPowerW = last?.Threshold!.Power.Value.To(1),
            ThresholdFrom = last is null ? null : Words.Of(last.Threshold!.From),
            ThresholdEstimateW = opinion.Estimate?.Value.To(1),
            BestTwentyMinutes = opinion.BestTwentyMinutes is { } best ? Entry(best) : null,
            CriticalPowerW = opinion.Critical?.Power.Value.To(1),
            WorkAboveCriticalPowerKj = (opinion.Critical?.WorkAboveJ / 1000).To(1),
            CriticalPowerEfforts = [.. opinion.Efforts.Select(Entry)],
            InForce = Steps(rides),
            Sentence = "",
        };
        return entry with { Sentence = Sentence(entry) };
    }

    private static EffortEntry Entry(PowerEffort effort) =>
        new(effort.Best.DurationSeconds, effort.Best.MeanW.To(1), effort.File, effort.Date);

    private static ImmutableArray<ThresholdStepEntry> Steps(ImmutableArray<RideFigures> rides)
    {
        var steps = ImmutableArray.CreateBuilder<ThresholdStepEntry>();
        foreach (var ride in rides)
        {
            if (ride.Threshold is not { } threshold)
                continue;
            var step = new ThresholdStepEntry(ride.Date, threshold.Power.Value.To(1), Words.Of(threshold.From));
            if (steps.Count == 0 || steps[^1].Source != step.Source || Math.Abs(steps[^1].PowerW - step.PowerW) >= 1)
                steps.Add(step);
        }
        return steps.ToImmutable();
    }

    private static string Sentence(ThresholdsEntry entry)
    {
        var inForce = entry.ThresholdPowerW is { } power ? $"Threshold power (FTP) in force: {W(power)} ({entry.ThresholdFrom}). " : "No threshold power (FTP) is known. ";
        var estimate = entry.BestTwentyMinutes is { } best
            ? $"95 % of the best 20 minutes of the last 90 days ({LocalDatePattern.Iso.Format(best.Date)}) is {W(entry.ThresholdEstimateW!.Value)}; "
            : "No ride of the last 90 days holds 20 minutes with power; ";
        var critical = entry.CriticalPowerW is { } cp
            ? $"the work–time line through {Phrases.Count(entry.CriticalPowerEfforts.Length)} separate best efforts of 3 to 20 minutes puts critical power at {W(cp)}. Both are only as good as those efforts were hard."
            : "too few separate hard efforts of 2 to 20 minutes for a critical power.";
        return inForce + estimate + critical;
    }

    private static string W(double watts) => string.Create(CultureInfo.InvariantCulture, $"{watts.To(0):0} W");
}
