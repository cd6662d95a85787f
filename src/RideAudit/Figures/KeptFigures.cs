using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Rides;

namespace RideAudit.Figures;

/// <summary>Figures of rides kept from one review to the next: what nothing has changed for is not computed again.</summary>
/// <remarks>For one reader at a time. A ride joined from several recordings is joined anew each time and so computed anew.</remarks>
public sealed class KeptFigures
{
    private readonly Dictionary<string, (Ride Ride, Basis Basis, RideFigures Figures)> _kept = new(StringComparer.Ordinal);

    /// <summary>The figures of every ride, as <see cref="FigureBuilder.Build(ImmutableArray{Ride}, Rider, Limits)"/> computes them.</summary>
    /// <param name="rides">The rides in order of start.</param>
    /// <param name="rider">Thresholds, heart rates, band cuts.</param>
    /// <param name="limits">The limits that kinds are read by.</param>
    public ImmutableArray<RideFigures> Build(ImmutableArray<Ride> rides, Rider rider, Limits limits)
    {
        var thresholds = new ThresholdBook(rider, rides);
        return [.. rides.Select(r => Of(r, new Basis(thresholds.PowerFor(r), thresholds.HeartRateFor(r.Date), rider, limits), rider))];
    }

    private RideFigures Of(Ride ride, Basis basis, Rider rider)
    {
        if (_kept.TryGetValue(ride.File, out var before) && before.Basis == basis && IsSame(before.Ride, ride))
            return before.Figures;
        var figures = FigureBuilder.Build(ride, basis.Power, basis.HeartRateBpm, rider, basis.Limits);
        _kept[ride.File] = (ride, basis, figures);
        return figures;
    }

    private static bool IsSame(Ride one, Ride other) =>
        one.Parts.SequenceEqual(other.Parts)
        && one.RecordedParts.SequenceEqual(other.RecordedParts)
        && one.Remarks.SequenceEqual(other.Remarks)
        && one == other with { Parts = one.Parts, RecordedParts = one.RecordedParts, Remarks = one.Remarks };

    /// <summary>All that a ride's figures depend on beside the ride.</summary>
    private sealed record Basis(
        ThresholdInForce? Power, double? HeartRateBpm, Limits Limits, Sex Sex, double? RestBpm, double? MaxBpm, double LowerCut, double UpperCut)
    {
        public Basis(ThresholdInForce? power, double? heartRateBpm, Rider rider, Limits limits)
            : this(power, heartRateBpm, limits, rider.Sex, rider.RestHeartRateBpm, rider.MaxHeartRateBpm, rider.Plan.LowerBandCutPercent, rider.Plan.UpperBandCutPercent)
        {
        }
    }
}
