using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Plan.Blocks;
using RideAudit.Plan.Table;
using RideAudit.Sessions;
using RideAudit.Tests.Simulation;
using RideAudit.Units;
using Ridden = RideAudit.Tests.Simulation.Session;

namespace RideAudit.Tests.Sessions;

public class SessionLibraryTests
{
    private const int Seeds = 15;
    private const int MustAgree = 14;

    private static readonly LocalDate Day = new(2026, 5, 19);
    private static readonly SimulatedRider Rider = new();

    public static TheoryData<string> Names => [.. SessionLibrary.All.Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_session_ridden_on_paper_is_judged_as_the_kind_it_claims(string name)
    {
        var session = SessionLibrary.Find(name)!;
        foreach (var minutes in DaysOf(session))
            Assert.Equal(session.Kind, KindOf(PlannedTrace.FiguresOf(FittedSession.Fit(session.Blocks, minutes)!, Day, Rider.File, LimitsFor(session))));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_session_ridden_on_an_uneven_road_or_indoors_is_judged_as_the_kind_it_claims(string name)
    {
        var session = SessionLibrary.Find(name)!;
        foreach (var on in (Surroundings[])[Surroundings.Road, Surroundings.Indoors])
        {
            foreach (var minutes in DaysOf(session))
            {
                var kinds = Enumerable.Range(1, Seeds).Select(seed => KindOf(Simulated(session, minutes, on, seed))).ToList();
                Assert.True(
                    kinds.Count(k => k == session.Kind) >= MustAgree,
                    $"{name}, {minutes} min: {string.Join(", ", kinds.GroupBy(k => k).Select(g => $"{g.Key} {g.Count()}"))}");
            }
        }
    }

    [Fact]
    public void Every_purpose_has_a_session_for_a_new_rider_or_says_from_where_on()
    {
        foreach (var purpose in Enum.GetValues<SessionPurpose>().Except([SessionPurpose.OverUnders, SessionPurpose.Sprints]))
            Assert.NotEmpty(SessionLibrary.For(purpose, Experience.New, 90));
        Assert.Empty(SessionLibrary.For(SessionPurpose.Sprints, Experience.New, 90));
        Assert.Equal(SessionLibrary.All.Length, SessionLibrary.All.Select(s => s.Name).Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    [Fact]
    public void A_purpose_goes_on_step_by_step_as_far_as_the_day_and_the_rider_allow()
    {
        string? Name(Experience experience, int minutes, int ridden) => SessionLibrary.Step(SessionPurpose.Threshold, experience, minutes, ridden)?.Name;

        Assert.Equal(["two tens at threshold", "three tens at threshold", "three twelves at threshold", "two twenties at threshold"],
            Enumerable.Range(0, 4).Select(ridden => Name(Experience.Regular, 75, ridden)));
        Assert.Equal("three tens at threshold", Name(Experience.New, 120, 9));
        Assert.Equal("three tens at threshold", Name(Experience.Racing, 55, 9));
        Assert.Equal("three twenties at threshold", Name(Experience.Racing, 120, 9));
        Assert.Null(Name(Experience.Racing, 30, 0));
    }

    [Fact]
    public void Work_grows_along_a_purpose()
    {
        foreach (var purpose in (SessionPurpose[])[SessionPurpose.Threshold, SessionPurpose.SweetSpot])
        {
            var work = SessionLibrary.All.Where(s => s.Purpose == purpose)
                .Select(s => FittedSession.Fit(s.Blocks, 150)!.Steps.Where(step => step.Role == StepRole.Work).Sum(step => step.Seconds)).ToList();
            Assert.Equal(work.Order(), work);
        }
    }

    [Theory]
    [InlineData("recovery", 60, null, 30.25)]
    [InlineData("endurance", 120, null, 84.5)]
    [InlineData("threshold", 60, null, 60.84)]
    [InlineData("high", 90, null, 85.125)]
    [InlineData("event", null, null, null)]
    [InlineData("rest", null, null, 0.0)]
    [InlineData("high", 60, 71.5, 71.5)]
    public void Planned_stress_is_the_rows_own_or_told_from_kind_and_minutes(string kind, int? minutes, double? stress, double? expected)
    {
        var row = new PlannedSession { Date = Day, Kind = Enum.Parse<PlannedKind>(kind, ignoreCase: true), Minutes = minutes, Stress = stress };

        Assert.Equal(expected, new SessionBook(Rider.File, new Limits()).Stress(row) is { } points ? Math.Round(points, 6) : null);
    }

    [Fact]
    public void A_named_session_has_the_stress_of_its_blocks_and_the_coachs_own_come_first()
    {
        // 30 min at 60 % and 30 min at 100 %: the fourth-power mean is 0.867 but for the half minute at each change.
        var own = new OwnSession("Two Tens at Threshold", PlannedKind.Threshold, 60, SessionBlocks.Read("30 min easy, 30 min 100 %", out _)!);
        var row = new PlannedSession { Date = Day, Kind = PlannedKind.Threshold, Minutes = 60, Session = "two tens at threshold" };
        var ratio = Math.Pow((Math.Pow(0.6, 4) + 1) / 2, 0.25);

        Assert.Equal(100 * ratio * ratio, new SessionBook(Rider.File with { Sessions = [own] }, new Limits()).Stress(row)!.Value, 0.7);
        Assert.NotEqual(100 * ratio * ratio, new SessionBook(Rider.File, new Limits()).Stress(row)!.Value, 5.0);
    }

    [Fact]
    public void A_session_whose_blocks_are_another_kind_than_it_claims_is_found()
    {
        var book = new SessionBook(Rider.File, new Limits());
        var sixes = SessionBlocks.Read("15 min easy, 4 x 6 min 100-106 %, 3 min easy between, easy to the end", out _)!;

        Assert.Equal(RideKind.Threshold, book.JudgedOtherwise(new OwnSession("sixes", PlannedKind.High, 60, sixes), Day));
        Assert.Null(book.JudgedOtherwise(new OwnSession("sixes", PlannedKind.Threshold, 60, sixes), Day));
    }

    /// <summary>The shortest day, and half an hour more; a long ride as long as the rider’s long rides are.</summary>
    private static int[] DaysOf(LibrarySession session) => session.Purpose == SessionPurpose.Long ? [150, 180] : [session.ShortestDay, session.ShortestDay + 30];

    private static Limits LimitsFor(LibrarySession session) => session.Purpose == SessionPurpose.Long ? new Limits { LongRideHours = 2.5 } : new Limits { LongRideHours = 4 };

    private static RideFigures Simulated(LibrarySession session, int minutes, Surroundings on, int seed)
    {
        var blocks = FittedSession.Fit(session.Blocks, minutes)!.Steps.Select(s => new SessionBlock(s.Seconds, EffortShares.At(s.Effort, s.Seconds / 2, s.Seconds)));
        var ride = Simulator.Ride(new Ridden(session.Name, on, [.. blocks]), seed, Rider).RideAt((Day + LocalTime.Noon).WithOffset(Offset.Zero));
        return FigureBuilder.Build([ride], Rider.File, LimitsFor(session))[0];
    }

    private static PlannedKind KindOf(RideFigures figures) => Enum.GetValues<PlannedKind>().Single(k => PlannedKinds.RiddenAs(k) == figures.Kind);
}
