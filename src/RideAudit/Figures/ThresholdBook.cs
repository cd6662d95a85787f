using System.Collections.Immutable;
using NodaTime;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Finds the threshold power and heart rate in force on a ride's date.</summary>
/// <remarks>
/// The rider file's dated list; else the recording's own value; else an estimate, 95 % of the best 20 minutes of the last 90 days
/// (Allen and Coggan, from memory; against critical power 7 ± 13 W, Karsten et al. 2021, Front Physiol).
/// </remarks>
internal sealed class ThresholdBook
{
    /// <summary>Days an estimate looks back.</summary>
    public const int EstimateDays = 90;

    /// <summary>Share of the best 20 minutes taken as threshold.</summary>
    public const double ShareOfBestTwentyMinutes = 0.95;

    private const int TwentyMinutes = 1200;

    private readonly ThresholdEntry[] _powers;
    private readonly ThresholdEntry[] _heartRates;
    private readonly Lazy<ImmutableArray<PoweredRide>> _powered;

    /// <summary>Creates the book.</summary>
    /// <param name="rider">The rider file.</param>
    /// <param name="rides">All rides.</param>
    public ThresholdBook(Rider rider, ImmutableArray<Ride> rides)
    {
        _powers = [.. rider.Thresholds.Where(t => t.Power is not null)];
        _heartRates = [.. rider.Thresholds.Where(t => t.HeartRateBpm is not null)];
        _powered = new(() => [.. AllCores.Select(rides, Powered).OfType<PoweredRide>().OrderBy(r => r.Start)]);
    }

    /// <summary>Threshold power in force on a ride's date; null when nothing tells.</summary>
    public ThresholdInForce? PowerFor(Ride ride)
    {
        if (_powers.LastOrDefault(t => t.From <= ride.Date) is { } dated)
            return new ThresholdInForce(dated.Power!.Value, ThresholdSource.RiderFile);
        if (_powers.Length > 0)
            return new ThresholdInForce(_powers[0].Power!.Value, ThresholdSource.RiderFileFirstEntry);
        return ride.StoredThreshold is { } stored
            ? new ThresholdInForce(stored, ThresholdSource.Recording)
            : Estimate(ride);
    }

    /// <summary>Threshold heart rate in force on a date, bpm; null when the rider file has none.</summary>
    public double? HeartRateFor(LocalDate date) =>
        (_heartRates.LastOrDefault(t => t.From <= date) ?? _heartRates.FirstOrDefault())?.HeartRateBpm;

    private ThresholdInForce? Estimate(Ride ride)
    {
        var start = ride.StartsAt.ToInstant();
        var powered = _powered.Value;
        // Days are told by local dates, which no offset moves by two days: nothing before these counts.
        var from = FirstFrom(powered, start - Duration.FromDays(EstimateDays + 3));
        var before = powered[from..FirstFrom(powered, start)]
            .Where(p => Period.DaysBetween(p.Date, ride.Date) <= EstimateDays)
            .ToArray();
        var best = before.Max(p => p.BestTwentyMinutesW);
        return best is null
            ? null
            : new ThresholdInForce(
                new Watts(best.Value * ShareOfBestTwentyMinutes), ThresholdSource.Estimate,
                before.Length, Period.DaysBetween(before[0].Date, ride.Date));
    }

    private static int FirstFrom(ImmutableArray<PoweredRide> inOrder, Instant start)
    {
        var (low, high) = (0, inOrder.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (inOrder[middle].Start < start)
                low = middle + 1;
            else
                high = middle;
        }
        return low;
    }

    /// <summary>A ride that has power for at least half of its time: less is not used for anything.</summary>
    private static PoweredRide? Powered(Ride ride)
    {
        using var phase = Phase.Begin("estimates");
        if (SpikeFilter.Clean(ride.Grid, null) is not var (power, _) || power.Values < FigureBuilder.UsableCoverage * ride.TimerSeconds)
            return null;
        using var samples = power.Lend();
        using var totals = new RunningTotals(samples.Span);
        return new PoweredRide(ride.StartsAt.ToInstant(), ride.Date, BestPowers.MeanOf(totals, TwentyMinutes));
    }

    private readonly record struct PoweredRide(Instant Start, LocalDate Date, double? BestTwentyMinutesW);
}
