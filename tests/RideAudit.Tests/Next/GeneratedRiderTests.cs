using System.Globalization;
using RideAudit.Rules;

namespace RideAudit.Tests.Next;

/// <summary>Layouts of riders made at random keep every rule, or name the one that gave way.</summary>
public class GeneratedRiderTests
{
    // The threshold's age is nobody's layout.
    private const string OfTheThreshold = "threshold-fresh";
    private const int OnTheRoadEvery = 4;

    /// <summary>How many; RIDEAUDIT_RIDERS sets another number.</summary>
    private static int Riders => int.Parse(Environment.GetEnvironmentVariable("RIDEAUDIT_RIDERS") ?? "60", CultureInfo.InvariantCulture);

    [Fact]
    public void Every_layout_keeps_the_rules_or_names_the_one_that_gave_way_on_paper_and_on_the_road()
    {
        int gave = 0, roads = 0;
        var faults = new List<string>();
        for (var seed = 0; seed < Riders; seed++)
        {
            var (rider, past) = GeneratedRider.Of(seed);
            var week = RiddenWeeks.LayOut(rider, past).Weeks.Single();
            var named = week.GaveWay?.Rules ?? [];
            gave += named.IsEmpty ? 0 : 1;
            var who = $"{seed}: {rider.Plan.WeeklyHours} h {rider.Experience} after {past.Length} weeks, {RiddenWeeks.Line(week)}";
            faults.AddRange(week.Verdicts.Where(v => v.Verdict is Verdict.Watch or Verdict.Broken && v.Rule != OfTheThreshold && !named.Contains(v.Rule)).Select(v => $"{who}: on paper {v.Rule}"));
            if (seed % OnTheRoadEvery != 0)
                continue;
            roads++;
            var knowing = OnTheRoad.Knowing(rider, week);
            var plan = OnTheRoad.PlanOf(knowing, past, week.StartsOn);
            var ridden = OnTheRoad.Ride(week, knowing, plan, past, seed);
            faults.AddRange(OnTheRoad.Wanting(ridden, plan, past).Where(f => f.Rule != OfTheThreshold && !named.Contains(f.Rule)).Select(f => $"{who}: on the road {f.Rule} {f.Verdict} {f.Sentence}"));
        }
        Assert.True(faults.Count == 0, $"{Riders} riders, {gave} gave way, {roads} on the road, {faults.Count} faults\n{string.Join('\n', faults)}");
    }
}
