using System.Collections.Immutable;
using RideAudit.Plan;

namespace RideAudit.Rules;

/// <summary>One rule: a pure function of a week and what came before.</summary>
public interface IRule
{
    /// <summary>The id, such as <c>hard-day-spacing</c>.</summary>
    string Id { get; }

    /// <summary>The name, such as <c>Hard day spacing</c>.</summary>
    string Name { get; }

    /// <summary>What the rule asks, in one plain sentence with this plan's numbers.</summary>
    /// <param name="plan">The plan in force.</param>
    string Ask(PlanInForce plan);

    /// <summary>What the rule rests on.</summary>
    Evidence Evidence { get; }

    /// <summary>The source, or "common practice, no source".</summary>
    string Source { get; }

    /// <summary>The limits it uses, by name.</summary>
    /// <param name="plan">The plan in force.</param>
    ImmutableArray<NamedNumber> LimitsOf(PlanInForce plan);

    /// <summary>Judges a week. Never throws on any week.</summary>
    /// <param name="week">The week, what came before, and the plan.</param>
    Finding Judge(WeekUnderReview week);
}
