using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>The threshold power a ride was measured against.</summary>
/// <param name="Power">Threshold power (FTP), W.</param>
/// <param name="From">Where it came from.</param>
/// <param name="PoweredRidesBefore">For an estimate: powered rides before this one in the 90 days it looks at.</param>
/// <param name="DaysOfHistory">For an estimate: days from the first of those rides to this one.</param>
public sealed record ThresholdInForce(Watts Power, ThresholdSource From, int PoweredRidesBefore = 0, int DaysOfHistory = 0)
{
    /// <summary>An estimate resting on fewer than six powered rides over 14 days: rules on kinds, bands or stress are not judged.</summary>
    public bool IsThin => From == ThresholdSource.Estimate && (PoweredRidesBefore < 6 || DaysOfHistory < 14);

    /// <summary>An estimate: rules on kinds, bands or stress are never worse than <c>watch</c>.</summary>
    public bool IsEstimate => From == ThresholdSource.Estimate;
}
