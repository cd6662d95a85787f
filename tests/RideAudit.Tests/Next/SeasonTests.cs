using System.Collections.Immutable;
using RideAudit.Next;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Rules;
using RideAudit.Weeks;

namespace RideAudit.Tests.Next;

public class SeasonTests
{
    [Theory]
    [InlineData(6.5, Experience.Regular, 1)]
    [InlineData(10, Experience.Racing, 2)]
    public void Thirty_six_weeks_ridden_as_laid_out_on_uneven_roads_break_nothing_and_hold_three_watches_at_most(double hours, Experience experience, int seed)
    {
        var rider = RiddenWeeks.RiderOf(hours, experience);
        var past = ImmutableArray<WeekFacts>.Empty;
        var found = new List<string>();
        for (var i = 0; i < 36; i++)
        {
            var startsOn = RiddenWeeks.Monday.PlusDays(7 * i);
            var week = NextBuilder.LayOut(new NextStart { AsOf = startsOn, StartsOn = startsOn, Past = past }, rider, PlanTable.Empty, 1).Weeks.Single();
            rider = OnTheRoad.Knowing(rider, week);
            var plan = OnTheRoad.PlanOf(rider, past, startsOn);
            var ridden = OnTheRoad.Ride(week, rider, plan, past, seed * 1000 + i);
            found.AddRange(OnTheRoad.Wanting(ridden, plan, past).Select(f => $"{i} {f.Verdict} {f.Rule}: {f.Sentence} [{RiddenWeeks.Line(week)}]"));
            past = past.Add(ridden);
        }
        Assert.True(found.TrueForAll(f => !f.Contains($" {Verdict.Broken} ", StringComparison.Ordinal)) && found.Count <= 3, string.Join('\n', found));
    }
}
