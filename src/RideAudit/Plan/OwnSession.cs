using RideAudit.Plan.Blocks;

namespace RideAudit.Plan;

/// <summary>A session of the coach’s own.</summary>
/// <param name="Session">Its name, once in a rider file.</param>
/// <param name="Kind">What it is meant to be; neither rest nor event.</param>
/// <param name="Minutes">The length it is written for, min; it is fitted to the day.</param>
/// <param name="Blocks">What to ride.</param>
public sealed record OwnSession(string Session, PlannedKind Kind, int Minutes, SessionBlocks Blocks);
