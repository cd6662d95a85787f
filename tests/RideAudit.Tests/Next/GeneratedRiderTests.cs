using System.Globalization;
using RideAudit.Rules;

namespace RideAudit.Tests.Next;

/// <summary>Layouts of riders made at random keep every rule, or name the one that gave way.</summary>
public class GeneratedRiderTests
{
    // The threshold's age is nobody's layout.
    private const string OfTheThreshold = "threshold-fresh";

    /// <summary>How many; RIDEAUDIT_RIDERS sets another number.</summary>
    private static int Riders => int.Parse(Environment.GetEnvironmentVariable("RIDEAUDIT_RIDERS") ?? "60", CultureInfo.InvariantCulture);

    // Those that have taught something are asked every time.
    private static IEnumerable<int> Seeds => Enumerable.Range(0, Riders).Union([241, 428]);

    [Fact]
    public void Every_layout_keeps_the_rules_or_names_the_one_that_gave_way_on_paper_and_on_the_road()
    {
        var gave = 0;
        var faults = new List<string>();
        foreach (var seed in Seeds)
        {
            var (rider, past) = GeneratedRider.Of(seed);
            var week = RiddenWeeks.LayOut(rider, past).Weeks.Single();
            var named = week.GaveWay?.Rules ?? [];
            gave += named.IsEmpty ? 0 : 1;
            var who = $"{seed}: {rider.Plan.WeeklyHours} h {rider.Experience} after {past.Length} weeks, {RiddenWeeks.Line(week)}";
            faults.AddRange(week.Verdicts.Where(v => v.Verdict is Verdict.Watch or Verdict.Broken && v.Rule != OfTheThreshold && !named.Contains(v.Rule)).Select(v => $"{who}: on paper {v.Rule}"));
            var knowing = OnTheRoad.Knowing(rider, week);
            var plan = OnTheRoad.PlanOf(knowing, past, week.StartsOn);
            var ridden = OnTheRoad.Ride(week, knowing, plan, past, seed);
            faults.AddRange(OnTheRoad.Wanting(ridden, plan, past).Where(f => f.Rule != OfTheThreshold && !named.Contains(f.Rule)).Select(f => $"{who}: on the road {f.Rule} {f.Verdict} {f.Sentence}"));
        }
        Assert.True(faults.Count == 0, $"{Riders} riders, {gave} gave way, {faults.Count} faults\n{string.Join('\n', faults)}");
    }

    [Fact]
    public void Both_ends_of_the_printed_ranges_keep_what_the_layout_keeps()
    {
        var faults = new List<string>();
        var wide = 0;
        foreach (var seed in Seeds)
        {
            var (rider, past) = GeneratedRider.Of(seed);
            var week = RiddenWeeks.LayOut(rider, past).Weeks.Single();
            wide += week.Days.SelectMany(d => d.Sessions).Count(s => s.MinutesTo > s.MinutesFrom);
            var knowing = OnTheRoad.Knowing(rider, week);
            var plan = OnTheRoad.PlanOf(knowing, past, week.StartsOn);
            foreach (var atTop in new[] { false, true })
            {
                var ridden = OnTheRoad.OnPaper(week, knowing, plan, past, s => atTop ? s.MinutesTo : s.MinutesFrom);
                faults.AddRange(OnTheRoad.Wanting(ridden, plan, past).Where(f => f.Rule != OfTheThreshold && !(week.GaveWay?.Rules ?? []).Contains(f.Rule))
                    .Select(f => $"{seed}, {(atTop ? "most" : "least")}: {RiddenWeeks.Line(week)}: {f.Rule} {f.Verdict} {f.Sentence}"));
            }
        }
        Assert.True(faults.Count == 0, string.Join('\n', faults));
        Assert.True(wide > Riders);
    }
}
