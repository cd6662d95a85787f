using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan.Table;

namespace RideAudit.Held;

/// <summary>A planned session and what became of it, or a ride that nobody planned.</summary>
/// <param name="Planned">The session; null for an added ride.</param>
/// <param name="Rides">What was ridden for it; empty for a session that was not ridden and for a kept rest day.</param>
/// <param name="Outcomes">At least one.</param>
/// <param name="Sentence">The same in words.</param>
internal sealed record HeldLine(PlannedSession? Planned, ImmutableArray<RideFigures> Rides, ImmutableArray<HeldOutcome> Outcomes, string Sentence)
{
    /// <summary>The day it was ridden on; null when it was not.</summary>
    public LocalDate? RiddenOn => Rides.IsEmpty ? null : Rides[0].Date;

    /// <summary>The day it stands under: the planned one, else the ridden one.</summary>
    public LocalDate Date => Planned?.Date ?? Rides[0].Date;
}
