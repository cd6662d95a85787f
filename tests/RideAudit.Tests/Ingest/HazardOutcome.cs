namespace RideAudit.Tests.Ingest;

/// <summary>What a file with one hazard must give.</summary>
/// <param name="Timers">Timer seconds of each recording; none: no recording.</param>
/// <param name="PowerSeconds">Seconds with power over all recordings.</param>
/// <param name="PowerSum">Their sum, W.</param>
/// <param name="Problems">Problems of its notices, in order.</param>
public sealed record HazardOutcome(int[] Timers, int PowerSeconds, double PowerSum, params string[] Problems);
