using NodaTime;

namespace RideAudit.Plan;

/// <summary>A rule that is not applied for a while.</summary>
/// <param name="Rule">Its id.</param>
/// <param name="Until">The last day it is set aside for: the last day of a week decides.</param>
/// <param name="Why">The reason, as the coach wrote it.</param>
public sealed record SetAsideRule(string Rule, LocalDate Until, string Why);
