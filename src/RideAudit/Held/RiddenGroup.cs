using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Units;

namespace RideAudit.Held;

/// <summary>Rides of one day and one class, hard or easy, that may stand for one session.</summary>
/// <param name="Rides">At least one, in order of start.</param>
internal readonly record struct RiddenGroup(ImmutableArray<RideFigures> Rides)
{
    public LocalDate Date => Rides[0].Date;

    public double Minutes => Rides.Sum(r => r.DurationSeconds) / 60;

    /// <summary>The hardest kind among them.</summary>
    public RideKind Kind => Rides.Max(r => r.Kind);
}
