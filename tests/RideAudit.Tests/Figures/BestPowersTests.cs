using RideAudit.Figures;
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
