using RideAudit.Figures;
using RideAudit.Units;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>Arithmetic; values derived.</summary>
public sealed class BestPowersTests
{
    [Fact]
    public void The_best_window_is_found_where_it_is()
    {
        var power = Blocks((100, 150), (60, 400), (300, 150));
        var best = BestPowers.Of(power, [5, 60, 300]);
        Assert.Equal(new[] { new BestPower(5, 400, 100), new BestPower(60, 400, 100), new BestPower(300, 200, 0) }, best.ToArray());
    }

    [Fact]
    public void A_duration_longer_than_the_ride_has_no_entry() => Assert.Empty(BestPowers.Of(Flat(59, 200), [60]));

    [Fact]
    public void A_duration_as_long_as_the_ride_has_one() => Assert.Equal(new BestPower(60, 200, 0), Assert.Single(BestPowers.Of(Flat(60, 200), [60])));

    [Fact]
    public void Running_totals_know_the_stretches_without_missing_power()
    {
        using var whole = new RunningTotals(Flat(5, 200));
        Assert.False(whole.HasGaps);
        Assert.Equal([(0, 5)], whole.Runs);
        using var gap = new RunningTotals([200, None, None, 100, 100, None]);
        Assert.True(gap.HasGaps);
        Assert.Equal([(0, 1), (3, 5)], gap.Runs);
        Assert.Equal([0.0, 200, 200, 200, 300, 400, 400], gap.Totals.ToArray());
        using var late = new RunningTotals([None, 100]);
        Assert.True(late.HasGaps);
        using var early = new RunningTotals([100, None]);
        Assert.True(early.HasGaps);
    }

    [Fact]
    public void The_bests_of_a_trend_are_those_of_the_ride()
    {
        using var totals = new RunningTotals(Blocks((100, 150), (60, 400), (300, 150)));
        Assert.Equal((400.0, 200.0, null), (TrendBests.Of(totals).Of(60), TrendBests.Of(totals).Of(300), TrendBests.Of(totals).Of(1200)));
        Assert.Null(TrendBests.Of(totals).Of(5));
    }

    [Fact]
    public void A_mean_is_of_the_values_there_are()
    {
        Assert.Equal(2, Channel.Mean([1, None, 3]));
        Assert.True(double.IsNaN(Channel.Mean([None])));
    }

    [Fact]
    public void Power_in_full_is_the_power_of_every_second_and_pauses_are_known()
    {
        var power = Blocks((10, 150), (3, None), (30, 210));
        var clean = CleanPower.Of(Grid(power, null, 20, 30), new Watts(250))!;
        Assert.Equal(power, clean.InFull());
        (int, int, bool)[] asked = [(0, 19, false), (0, 20, true), (20, 20, true), (21, 29, false), (30, 42, true), (31, 42, false)];
        Assert.All(asked, a => Assert.Equal(a.Item3, clean.HasPauseWithin(a.Item1, a.Item2)));
        Assert.Null(CleanPower.Of(Grid([None, None], null), null));
    }

    [Fact]
    public void Bests_and_zones_that_were_given_are_those_that_are_told()
    {
        var figures = FiguresOf(Ride(Flat(1300, 300))) with { Bests = [new BestPower(60, 410, 0), new BestPower(300, 350, 0)], Zones = new ZoneSeconds(1, 2, 3, 4, 5, 6, 7) };
        Assert.Equal((410.0, 350.0, null), (figures.BestMeanW(60), figures.BestMeanW(300), figures.BestMeanW(1200)));
        Assert.Equal([1, 2, 3, 4, 5, 6, 7], figures.Zones.ToArray());
    }

    [Fact]
    public void A_window_never_spans_missing_power()
    {
        var power = Blocks((40, 400), (1, double.NaN), (40, 400), (60, 100));
        Assert.Equal((40 * 400 + 20 * 100) / 60.0, Assert.Single(BestPowers.Of(power, [60])).MeanW, 9);
    }

    [Fact]
    public void A_window_may_span_a_pause_because_it_is_timer_time() =>
        Assert.Equal(300, Assert.Single(FiguresOf(Ride(Flat(100, 300), pausesBefore: 50)).Bests, b => b.DurationSeconds == 60).MeanW, 9);

    [Fact]
    public void Every_ride_is_asked_for_the_named_durations() => Assert.Equal([5, 60, 180, 300, 720, 1200, 3600], BestPowers.Durations);
}
