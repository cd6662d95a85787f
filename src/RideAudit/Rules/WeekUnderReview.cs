using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>All that a rule may look at: judging is a pure function of this.</summary>
/// <param name="Past">What came before.</param>
/// <param name="Plan">The plan in force.</param>
public sealed record WeekUnderReview(WeekFacts Week, Past Past, PlanInForce Plan);
