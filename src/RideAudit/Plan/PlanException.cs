using NodaTime;

namespace RideAudit.Plan;

/// <summary>Days the rider file excepts.</summary>
/// <param name="From">First day.</param>
/// <param name="To">Last day, not before the first.</param>
/// <param name="Kind">Why.</param>
public sealed record PlanException(LocalDate From, LocalDate To, ExceptionKind Kind);
