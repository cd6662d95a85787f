using System.Collections.Immutable;
using NodaTime;
using RideAudit.Next;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Sessions;

namespace RideAudit.Tests.Next;

/// <summary>Where the search says that a rule gives way, trying everything finds no layout that keeps all.</summary>
public class BruteForceTests
{
    private const int Step = 15;

    // Two days of an hour and one of 100 minutes hold 3 h 40 min: neither the hours planned nor the long ride asked for.
    [Theory]
    [InlineData(60, 60, 100, false)]
    [InlineData(60, 60, 180, true)]
    public void A_small_case_agrees_with_trying_everything(int tuesday, int thursday, int saturday, bool keeps)
    {
        var rider = RiddenWeeks.RiderOf(4.5, Experience.Regular, (IsoDayOfWeek.Tuesday, tuesday), (IsoDayOfWeek.Thursday, thursday), (IsoDayOfWeek.Saturday, saturday));
        var frame = new FrameBuilder(rider, PlanTable.Empty).Build(RiddenWeeks.Monday, [], [], false, [])!;
        var found = RiddenWeeks.LayOut(rider).Weeks.Single();
        var judge = new WeekJudge(frame);
        var choices = frame.Days.Select(d => Choices(frame, d.Free).ToArray()).ToArray();
        var anyKeeps = All(choices, 0, []).Any(week => judge.Weigh(judge.Facts(week.AsSpan())) == 0);
        Assert.Equal(keeps, anyKeeps);
        Assert.Equal(keeps, found.GaveWay is null);
    }

    private static IEnumerable<ImmutableArray<StockRide>> Choices(WeekFrame frame, int room)
    {
        yield return [];
        for (var minutes = 30; minutes <= room; minutes += Step)
        {
            foreach (var purpose in new[] { SessionPurpose.Recovery, SessionPurpose.Endurance, SessionPurpose.Long })
                yield return [frame.Stock.Easy(purpose, minutes)!];
            foreach (var kind in new[] { PlannedKind.High, PlannedKind.Threshold })
            {
                if (new SessionChoice(frame).Of(kind, 0, minutes, 0) is { } hard)
                    yield return [hard];
            }
        }
    }

    private static IEnumerable<ImmutableArray<ImmutableArray<StockRide>>> All(ImmutableArray<StockRide>[][] choices, int day, ImmutableArray<ImmutableArray<StockRide>> sofar)
    {
        if (day == 7)
            return [sofar];
        return choices[day].SelectMany(c => All(choices, day + 1, sofar.Add(c)));
    }
}
