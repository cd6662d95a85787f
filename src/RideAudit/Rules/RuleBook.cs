using System.Collections.Immutable;

namespace RideAudit.Rules;

/// <summary>All rules, in the order of the method.</summary>
public static class RuleBook
{
    /// <summary>The rules.</summary>
    public static ImmutableArray<IRule> All => [.. Rules];

    internal static ImmutableArray<Rule> Rules { get; } =
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
        new ThresholdFresh(),
    ];

    /// <summary>Judges a week by every rule.</summary>
    /// <param name="week">The week, what came before, and the plan.</param>
    /// <returns>One finding a rule, in the order of <see cref="All"/>.</returns>
    public static ImmutableArray<Finding> Judge(WeekUnderReview week)
    {
        var judged = new JudgedWeek(week);
        return [.. Rules.Select(r => r.Judge(judged))];
    }
}
