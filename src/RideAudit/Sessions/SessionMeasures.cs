using NodaTime;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Sessions;

/// <summary>What a rider knows of their thresholds: sessions are told in it and in nothing else.</summary>
/// <param name="Power">Threshold power; null when unknown.</param>
/// <param name="HeartRateBpm">Threshold heart rate, bpm; null when unknown.</param>
public readonly record struct SessionMeasures(Watts? Power, double? HeartRateBpm)
{
    /// <summary>What the rider file says for a date: the latest entry on or before it that has a value, else the first that has.</summary>
    /// <param name="rider">The rider file.</param>
    public static SessionMeasures Of(Rider rider, LocalDate date) => new(
        In(rider, date, t => t.Power is not null)?.Power,
        In(rider, date, t => t.HeartRateBpm is not null)?.HeartRateBpm);

    private static ThresholdEntry? In(Rider rider, LocalDate date, Func<ThresholdEntry, bool> has) =>
        rider.Thresholds.LastOrDefault(t => t.From <= date && has(t)) ?? rider.Thresholds.FirstOrDefault(has);
}
