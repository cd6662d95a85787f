using RideAudit.Plan;
using RideAudit.Rules;

namespace RideAudit.Tests.Coach;

/// <summary>A drawn week with one thing wrong in it.</summary>
/// <param name="Name">What a test calls it.</param>
/// <param name="Usual">The weeks before.</param>
/// <param name="Week">The week.</param>
/// <param name="Rule">The rule that says what is wrong.</param>
/// <param name="Verdict">How it says so.</param>
internal sealed record Fault(string Name, TradeWeek Usual, TradeWeek Week, string Rule, Verdict Verdict = Verdict.Broken)
{
    /// <summary>The weeks before hold lighter ones.</summary>
    public bool LighterWeeks { get; init; } = true;

    /// <summary>Days out.</summary>
    public PlanException[] Exceptions { get; init; } = [];
}
