using RideAudit.Document;
using RideAudit.Rules;
using RideAudit.Testing.Samples;

namespace RideAudit.Cli.Tests.Support;

/// <summary>Documents made by hand, so that what is shown is tested apart from what is computed.</summary>
internal static class Samples
{
    public static ReviewDocument Review() => SampleReviews.Middle();

    public static RidesDocument Rides() => new("rideaudit-rides/1", Review().Rides, Review().Notices);

    public static WeeksDocument Weeks() => new("rideaudit-weeks/1", [Review().Week]);

    public static RulesDocument Rules() => new("rideaudit-rules/1",
    [
        new("hard-day-spacing", [], Evidence.CommonPractice, "common practice, no source", "At least one day between two hard days."),
        new("chronic-ramp", [new("watch_above_points", 5, "watch above 5"), new("broken_above_points", 8, "broken above 8")], Evidence.Handbook, "A handbook of coaching, 2006",
            "Chronic load grows by at most 5 points a week; more than 8 breaks the rule, and nobody grows faster for long without paying for it later."),
    ]);
}
