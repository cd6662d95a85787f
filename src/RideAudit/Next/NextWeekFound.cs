using System.Collections.Immutable;

namespace RideAudit.Next;

/// <summary>The layout chosen, and those it was chosen over, so that the reason can be told.</summary>
/// <param name="Days">The seven days chosen.</param>
/// <param name="HardDaysAtMost">Hard days that would have been allowed.</param>
/// <param name="WithOneMoreHardDay">The best layout with one hard day more; null when the days leave no room or no more is allowed.</param>
/// <param name="WithFullHours">The best layout that holds the hours aimed at; null when none does.</param>
/// <param name="AimedMinutes">Minutes aimed at.</param>
internal sealed record NextWeekFound(
    ImmutableArray<PlannedDay> Days,
    int HardDaysAtMost,
    ImmutableArray<PlannedDay>? WithOneMoreHardDay,
    ImmutableArray<PlannedDay>? WithFullHours,
    double AimedMinutes);
