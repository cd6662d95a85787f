using System.Collections.Immutable;

namespace RideAudit.Rules;

/// <summary>Rules in the order they are judged and shown in.</summary>
public sealed class RuleBook
{
    private RuleBook(ImmutableArray<Rule> rules) => Rules = rules;

    /// <summary>All rules, in the order of the method.</summary>
    public static RuleBook Standard { get; } = new(
    [
        new HardDaySpacing(),
        new HardDayCount(),
        new RestDays(),
        new RestAfterLoad(),
        new LongRide(),
        new EnduranceVolume(),
        new IntensitySplit(),
        new WeeklyHours(),
        new ChronicRamp(),
        new WeeklyGrowth(),
        new LongestRideJump(),
        new GrowthIsEndurance(),
        new EasyRidesEasy(),
        new LighterWeek(),
        new Monotony(),
        new LongRideFirst(),
        new ReturnToRiding(),
        new ThresholdFresh(),
    ]);

    /// <summary>The rules.</summary>
    public ImmutableArray<IRule> All => [.. Rules];

    /// <summary>The rules' ids.</summary>
    public IReadOnlyList<string> Ids => [.. Rules.Select(r => r.Id)];

    internal ImmutableArray<Rule> Rules { get; }

    /// <summary>Judges a week by every rule.</summary>
    /// <param name="week">The week, what came before, and the plan.</param>
    /// <returns>One finding a rule, in the order of <see cref="All"/>.</returns>
    public ImmutableArray<Finding> Judge(WeekUnderReview week)
    {
        var judged = new JudgedWeek(week);
        return [.. Rules.Select(r => r.Judge(judged))];
    }

    /// <summary>Broken and watched rules, most serious first: broken before watch, then as each rule ranks itself.</summary>
    internal static ImmutableArray<Finding> MostSerious(ImmutableArray<Finding> findings) =>
        [.. findings.Where(f => f.Verdict is Verdict.Broken or Verdict.Watch).OrderByDescending(f => f.Verdict).ThenBy(f => f.Standing.Rank)];

    /// <summary>The same rules and one more, last.</summary>
    internal RuleBook With(Rule rule) => new(Rules.Add(rule));
}
