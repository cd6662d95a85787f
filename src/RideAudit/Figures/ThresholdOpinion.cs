using System.Collections.Immutable;
using NodaTime;
using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>What recent rides say of threshold power, beside the value in force: 95 % of the best 20 minutes, and critical power.</summary>
internal sealed record ThresholdOpinion
{
    /// <summary>Fewest separate efforts that a critical power rests on.</summary>
    public const int FewestEfforts = 3;

    private const int ShortestEffortSeconds = 120;
    private const int LongestEffortSeconds = 1200;

    /// <summary>The best 20 minutes of the 90 days; null when no ride holds 20 minutes with power.</summary>
    public PowerEffort? BestTwentyMinutes { get; init; }

    /// <summary>95 % of them; null without.</summary>
    public Watts? Estimate => BestTwentyMinutes is { } best ? new Watts(best.Best.MeanW * ThresholdBook.ShareOfBestTwentyMinutes) : null;

    /// <summary>Critical power; null with fewer than three separate efforts, or where they make no sense together.</summary>
    public CriticalPower? Critical { get; init; }

    /// <summary>The efforts it rests on, shortest first; empty without it.</summary>
    public ImmutableArray<PowerEffort> Efforts { get; init; } = [];

    /// <summary>Reads the rides of 90 days.</summary>
    /// <param name="rides">Rides in any order; those after <paramref name="day"/> are left out.</param>
    /// <param name="day">The last day that counts.</param>
    public static ThresholdOpinion Of(IEnumerable<RideFigures> rides, LocalDate day)
    {
        var recent = rides
            .Where(r => r.Date <= day && Period.DaysBetween(r.Date, day) < ThresholdBook.EstimateDays)
            .OrderBy(r => r.StartsAt.ToInstant()).ThenBy(r => r.File, StringComparer.Ordinal)
            .SelectMany(r => r.Bests.Select(b => new PowerEffort(r.File, r.Date, b)))
            .ToArray();
        var efforts = SeparateEfforts(recent);
        var critical = efforts.Length >= FewestEfforts
            ? CriticalPower.Fit([.. efforts.Select(e => ((double)e.Best.DurationSeconds, e.Best.MeanW))])
            : null;
        return new ThresholdOpinion
        {
            BestTwentyMinutes = Best(recent, LongestEffortSeconds),
            Critical = critical,
            Efforts = critical is null ? [] : efforts,
        };
    }

    /// <summary>The best of each duration, the longest first; a shorter one inside a longer one is not an effort of its own.</summary>
    private static ImmutableArray<PowerEffort> SeparateEfforts(PowerEffort[] recent)
    {
        var separate = new List<PowerEffort>();
        foreach (var duration in BestPowers.Durations.Where(d => d is >= ShortestEffortSeconds and <= LongestEffortSeconds).OrderDescending())
            if (Best(recent, duration) is { } best && !separate.Exists(best.Overlaps))
                separate.Add(best);
        separate.Reverse();
        return [.. separate];
    }

    private static PowerEffort? Best(PowerEffort[] recent, int duration) =>
        recent.Where(e => e.Best.DurationSeconds == duration).MaxBy(e => e.Best.MeanW);
}
