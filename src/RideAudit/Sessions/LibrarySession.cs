using RideAudit.Plan;
using RideAudit.Plan.Blocks;

namespace RideAudit.Sessions;

/// <summary>A session of the library.</summary>
/// <param name="Name">Its name, once in the library.</param>
/// <param name="Purpose">What it is ridden for.</param>
/// <param name="Kind">What it is judged as when it is ridden as written.</param>
/// <param name="Experience">The least experience it is for.</param>
/// <param name="Blocks">What to ride.</param>
/// <param name="ShortestDay">The shortest day it is laid out on, min: at least what its blocks need.</param>
internal sealed record LibrarySession(string Name, SessionPurpose Purpose, PlannedKind Kind, Experience Experience, SessionBlocks Blocks, int ShortestDay);
