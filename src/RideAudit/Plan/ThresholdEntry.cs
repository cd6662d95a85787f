using NodaTime;
using RideAudit.Units;

namespace RideAudit.Plan;

/// <summary>One dated line of the rider file's thresholds.</summary>
/// <param name="From">In force from this date on.</param>
/// <param name="Power">Threshold power (FTP); null when the entry only has a heart rate.</param>
/// <param name="HeartRateBpm">Threshold heart rate, bpm; null when the entry only has a power.</param>
public sealed record ThresholdEntry(LocalDate From, Watts? Power, double? HeartRateBpm);
