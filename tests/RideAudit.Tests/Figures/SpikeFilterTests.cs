using RideAudit.Figures;
using RideAudit.Rides;
using RideAudit.Units;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>Limits are common practice, no source; values derived.</summary>
public sealed class SpikeFilterTests
{
    private static readonly Watts Threshold = new(250);

    [Theory]
    [InlineData(2501, 1)]
    [InlineData(2500, 0)]
    public void Power_above_2500_W_is_a_fault_even_without_a_threshold(double watts, int spikes) =>
        Assert.Equal(spikes, Clean(Blocks((50, 200), (4, watts), (50, 200)), null).Spikes / 4);

    [Theory]
    [InlineData(751, 250, 250, 1)]
    [InlineData(750, 249, 249, 0)]
    [InlineData(760, 254, 100, 0)]
    [InlineData(760, 100, 254, 0)]
    [InlineData(760, 253, 253, 1)]
    public void A_lone_second_above_three_times_both_neighbours_and_threshold_is_a_fault(double watts, double before, double after, int spikes) =>
        Assert.Equal(spikes, Clean(Blocks((50, before), (1, watts), (50, after)), Threshold).Spikes);

    [Fact]
    public void A_sprint_of_two_seconds_stays() => Assert.Equal(0, Clean(Blocks((50, 200), (2, 1100), (50, 200)), Threshold).Spikes);

    [Fact]
    public void A_start_from_standing_still_stays_when_it_lasts() => Assert.Equal(0, Clean(Blocks((50, 0), (6, 900), (50, 0)), Threshold).Spikes);

    [Fact]
    public void A_second_at_a_pause_is_not_alone_for_sure_and_stays() =>
        Assert.Equal(0, SpikeFilter.Clean(Grid(Blocks((50, 200), (1, 900), (50, 200)), null, 51), Threshold)!.Value.Spikes);

    [Fact]
    public void Up_to_three_seconds_of_spikes_are_missing_power_that_holds_the_last_value()
    {
        var (power, spikes) = Clean(Blocks((50, 200), (3, 3000), (50, 210)), Threshold);
        Assert.Equal(3, spikes);
        Assert.Equal(Blocks((53, 200), (50, 210)), power);
    }

    [Fact]
    public void Longer_ones_stay_missing()
    {
        var (power, spikes) = Clean(Blocks((50, 200), (4, 3000), (50, 210)), Threshold);
        Assert.Equal(4, spikes);
        Assert.Equal(Blocks((50, 200), (4, double.NaN), (50, 210)), power);
    }

    [Fact]
    public void A_spike_beside_missing_power_does_not_fill_it()
    {
        var (power, _) = Clean(Blocks((50, 200), (1, 3000), (8, double.NaN), (50, 210)), Threshold);
        Assert.Equal(9, power.Count(float.IsNaN));
    }

    [Theory]
    [InlineData(2500, 0)]
    [InlineData(2500.5, 1)]
    public void The_absolute_limit_itself_is_kept_where_three_times_threshold_is_less(double watts, int spikes) =>
        Assert.Equal(spikes, Clean(Blocks((50, 2300), (2, watts), (50, 2300)), new Watts(800)).Spikes / 2);

    [Theory]
    [InlineData(762, 254, 100)]
    [InlineData(762, 100, 254)]
    public void Exactly_three_times_a_neighbour_is_no_fault(double watts, double before, double after) =>
        Assert.Equal(0, Clean(Blocks((50, before), (1, watts), (50, after)), Threshold).Spikes);

    [Fact]
    public void Exactly_three_times_threshold_is_no_fault_beside_one_that_is() =>
        Assert.Equal(1, Clean(Blocks((50, 200), (1, 750), (50, 200), (1, 751), (50, 200)), Threshold).Spikes);

    [Fact]
    public void The_first_second_after_a_pause_is_not_alone_for_sure_and_stays() =>
        Assert.Equal(0, SpikeFilter.Clean(Grid(Blocks((50, 200), (1, 900), (50, 200)), null, 50), Threshold)!.Value.Spikes);

    [Fact]
    public void Missing_power_before_a_spike_is_not_held_over_and_a_spike_at_the_end_is()
    {
        var (power, spikes) = Clean(Blocks((50, 200), (2, double.NaN), (1, 3000), (50, 210), (1, 3000)), Threshold);
        Assert.Equal(2, spikes);
        Assert.Equal(Blocks((50, 200), (3, double.NaN), (51, 210)), power);
    }

    [Fact]
    public void Two_spikes_apart_hold_each_its_own_last_value()
    {
        var (power, _) = Clean(Blocks((50, 200), (1, 3000), (1, 205), (2, 3000), (50, 210)), Threshold);
        Assert.Equal(Blocks((51, 200), (3, 205), (50, 210)), power);
    }

    [Fact]
    public void The_grid_itself_is_not_changed()
    {
        var grid = Grid(Blocks((50, 200), (1, 3000), (50, 200)));
        SpikeFilter.Clean(grid, Threshold);
        Assert.Equal(3000, grid.PowerW![50]);
        var clean = Grid(Flat(50, 200));
        Assert.Same(clean.PowerW, SpikeFilter.Clean(clean, Threshold)!.Value.PowerW);
    }

    [Fact]
    public void The_ride_says_how_many_seconds_were_left_out()
    {
        var figures = FiguresOf(Ride(Blocks((600, 200), (1, 3000), (600, 200))));
        Assert.Contains("1 second of impossible power left out.", figures.Remarks);
        Assert.Equal(200, figures.NormalisedPower!.Value.Value, 9);
        Assert.DoesNotContain(figures.Bests, b => b.MeanW > 200.001);
    }

    private static (PackedSamples PowerW, int Spikes) Clean(float[] power, Watts? threshold) => SpikeFilter.Clean(Grid(power), threshold)!.Value;
}
