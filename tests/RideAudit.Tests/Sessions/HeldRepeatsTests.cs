using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Held;
using RideAudit.Plan;
using RideAudit.Plan.Blocks;
using RideAudit.Sessions;
using RideAudit.Tests.Simulation;
using RideAudit.Units;
using Ridden = RideAudit.Tests.Simulation.Session;

namespace RideAudit.Tests.Sessions;

/// <summary>The repeats of planned sessions found again in rides simulated at 250 W, ridden with the unsteadiness of real riding.</summary>
public class HeldRepeatsTests
{
    private const string Fives = "15 min easy, 4 x 5 min 108-112 %, 4 min easy between, easy to the end";
    private static readonly LocalDate Date = new(2026, 5, 19);

    [Theory]
    [InlineData(Fives, 60, 4)]
    [InlineData("15 min easy, 2 x 20 min 88-92 %, 5 min easy between, easy to the end", 75, 2)]
    [InlineData("15 min easy, 3 x (3 x (2 min 86-90 %, 1 min 100-103 %)), 5 min easy between, easy to the end", 60, 3)]
    [InlineData("15 min easy, 2 x (10 x 30/30 s 130-138 %), 5 min easy between, easy to the end", 60, 20)]
    [InlineData("15 min easy, 12 x 12 s all out, 2 min 30 s easy between, easy to the end", 60, 12)]
    public void Every_repeat_is_found_at_its_power(string blocks, int minutes, int count)
    {
        for (var seed = 1; seed <= 5; seed++)
        {
            var fitted = FittedSession.Fit(SessionBlocks.Read(blocks, out _)!, minutes)!;
            var found = HeldRepeats.Of(fitted, Ride(fitted.Steps, seed));
            Assert.Equal(count, found.Length);
            Assert.All(found.Where(r => r.LowW is not null), r => Assert.InRange(r.RiddenW!.Value, 0.92 * r.LowW!.Value, 1.08 * r.HighW!.Value));
            Assert.All(found.Where(r => r.LowW is null), r => Assert.True(r.RiddenW > 500));
        }
    }

    [Fact]
    public void A_repeat_begins_where_it_was_ridden()
    {
        var fitted = Fit(Fives, 60);
        var found = HeldRepeats.Of(fitted, Ride(fitted.Steps, 3));
        for (var i = 0; i < 4; i++)
            Assert.InRange(found[i].StartSecond!.Value, 900 + i * 540 - 10, 900 + i * 540 + 10);
    }

    [Fact]
    public void A_longer_warm_up_and_a_stop_between_do_not_matter()
    {
        var planned = Fit(Fives, 60);
        ImmutableArray<SessionStep> ridden = [Easy(25 * 60), Work(300), Easy(420), Work(300), Easy(100), Work(300), Easy(240), Work(300), Easy(60)];
        var found = HeldRepeats.Of(planned, Ride(ridden, 2));
        Assert.All(found, r => Assert.InRange(r.RiddenW!.Value, 262, 290));
        Assert.InRange(found[0].StartSecond!.Value, 1490, 1510);
    }

    [Fact]
    public void Of_four_repeats_three_ridden_are_the_first_three_and_the_fourth_was_not_ridden()
    {
        var found = HeldRepeats.Of(Fit(Fives, 60), Ride([Easy(900), Work(300), Easy(240), Work(300), Easy(240), Work(300), Easy(1200)], 4));
        Assert.Equal([true, true, true, false], found.Select(r => r.RiddenW is not null));
        Assert.Null(found[3].StartSecond);
        Assert.Matches(@"^Planned 4.×.5.min at 270.to.280.W: 1\).\d+.W, 2\).\d+.W, 3\).\d+.W, 4\).not ridden\.$", RepeatWords.Of(found)!);
    }

    [Fact]
    public void Different_repeats_are_each_told_with_what_was_meant()
    {
        var fitted = Fit("15 min easy, 5 min all out, 10 min easy, 2 x 10 min 93-97 %, 5 min easy between, easy to the end", 70);
        Assert.Matches(
            @"^Planned repeats: 1\).5.min all out, \d+.W, 2\).10.min at 233.to.243.W, \d+.W, 3\).10.min at 233.to.243.W, \d+.W\.$",
            RepeatWords.Of(HeldRepeats.Of(fitted, Ride(fitted.Steps, 1)))!);
    }

    [Theory]
    [InlineData("62-68 % to the end")]
    [InlineData("20 min easy, 3 x 10 min 94-97 % hr, 5 min easy between, easy to the end")]
    [InlineData("15 min easy, 5 x 4 min feel 8, 3 min easy between, easy to the end")]
    public void An_easy_session_and_one_told_in_no_watts_have_none(string blocks)
    {
        var fitted = Fit(blocks, 60);
        Assert.Empty(HeldRepeats.Of(fitted, Ride(Fit(Fives, 60).Steps, 1)));
        Assert.Null(RepeatWords.Of([]));
    }

    [Fact]
    public void A_ride_too_short_for_all_repeats_or_without_power_has_those_it_can_hold()
    {
        var found = HeldRepeats.Of(Fit(Fives, 60), Ride([Easy(600), Work(300), Easy(120)], 1));
        Assert.Equal([true, false, false, false], found.Select(r => r.RiddenW is not null));
        var bare = new RideFigures { File = "a", StartsAt = At, DurationSeconds = 3600, ElapsedSeconds = 3600, Kind = RideKind.High };
        Assert.Empty(HeldRepeats.Of(Fit(Fives, 60), bare));
    }

    private static OffsetDateTime At => (Date + LocalTime.Noon).WithOffset(Offset.Zero);

    private static FittedSession Fit(string blocks, int minutes) => FittedSession.Fit(SessionBlocks.Read(blocks, out _)!, minutes)!;

    private static SessionStep Easy(int seconds) => new(seconds, Effort.Easy, StepRole.Between);

    private static SessionStep Work(int seconds) => new(seconds, new Effort(EffortMeasure.PowerShare, 108, 112), StepRole.Work);

    private static RideFigures Ride(ImmutableArray<SessionStep> steps, int seed)
    {
        var simulated = Simulator.Ride(
            new Ridden("", Surroundings.Road, [.. steps.Select(s => new SessionBlock(s.Seconds, EffortShares.At(s.Effort, s.Seconds / 2, s.Seconds)))]), seed, new SimulatedRider(250, 48, 168));
        return FigureBuilder.Build(simulated.RideAt(At), new ThresholdInForce(new Watts(250), ThresholdSource.RiderFile), 168, new Rider(), new Limits());
    }
}
