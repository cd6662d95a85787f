using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Units;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>Coverage limits are common practice, no source; values derived.</summary>
public sealed class FigureBuilderTests
{
    [Theory]
    [InlineData(0, false, true)]
    [InlineData(360, false, true)]
    [InlineData(361, true, true)]
    [InlineData(1800, true, true)]
    [InlineData(1801, false, false)]
    public void Power_of_less_than_nine_tenths_is_partial_and_of_less_than_half_unused(int missing, bool partial, bool used)
    {
        var figures = FiguresOf(Ride(Blocks((3600 - missing, 200), (missing, double.NaN)), Flat(3600, 130)), Rider(heartRate: 160));
        Assert.Equal((3600 - missing) / 3600.0, figures.PowerCoverage, 9);
        Assert.Equal(partial, figures.Partial);
        Assert.Equal(used ? MeasureSource.Power : MeasureSource.HeartRate, figures.MeasuredBy);
        Assert.Equal(used ? StressSource.Power : StressSource.HeartRate, figures.StressFrom);
        Assert.Equal(used, figures.MeanPowerW is not null);
        Assert.Equal(used, figures.WorkKj is not null);
        Assert.Equal(used, !figures.Bests.IsEmpty);
        Assert.Equal(used ? 3600 - missing : 0, figures.Zones.Total);
        Assert.Equal(used ? 3600 - missing : 3600, figures.Bands.Total);
    }

    [Theory]
    [InlineData(360, null)]
    [InlineData(361, "Power covers 89 % of the ride: its power figures are partial.")]
    [InlineData(1800, "Power covers 50 % of the ride: its power figures are partial.")]
    [InlineData(1801, "Power covers less than half of the ride and is not used.")]
    public void What_power_does_not_cover_is_said(int missing, string? remark)
    {
        var remarks = FiguresOf(Ride(Blocks((3600 - missing, 200), (missing, double.NaN)))).Remarks;
        if (remark is null)
            Assert.Empty(remarks);
        else
            Assert.Equal(remark, Assert.Single(remarks));
    }

    [Fact]
    public void Spikes_are_counted_in_words_that_fit_their_number()
    {
        Assert.Equal("1 second of impossible power left out.", Assert.Single(FiguresOf(Ride(Blocks((600, 200), (1, 3000), (600, 200)))).Remarks));
        Assert.Equal("2 seconds of impossible power left out.", Assert.Single(FiguresOf(Ride(Blocks((600, 200), (2, 3000), (600, 200)))).Remarks));
    }

    [Fact]
    public void Parts_are_named_where_there_are_several()
    {
        var ride = Ride(Flat(3600, 200));
        Assert.Empty(FiguresOf(ride).Parts);
        Assert.Equal("a.fit b.fit", string.Join(" ", FiguresOf(ride with { Parts = ["a.fit", "b.fit"] }).Parts));
    }

    [Fact]
    public void Heart_rate_of_half_of_the_ride_is_used() =>
        Assert.Equal(StressSource.HeartRate, FiguresOf(Ride(null, Blocks((1800, 150), (1800, double.NaN))), Rider(heartRate: 160)).StressFrom);

    [Fact]
    public void Missing_power_counts_in_no_mean_and_no_work()
    {
        var figures = FiguresOf(Ride(Blocks((2700, 200), (900, double.NaN))));
        Assert.Equal(200, figures.MeanPowerW!.Value, 9);
        Assert.Equal(540, figures.WorkKj!.Value, 9);
    }

    [Fact]
    public void A_true_0_W_counts_in_both()
    {
        var figures = FiguresOf(Ride(Blocks((2700, 200), (900, 0))));
        Assert.Equal(150, figures.MeanPowerW!.Value, 9);
        Assert.Equal(1, figures.PowerCoverage);
    }

    [Fact]
    public void Heart_rate_of_less_than_half_of_the_ride_is_shown_and_not_used()
    {
        var figures = FiguresOf(Ride(null, Blocks((1799, 150), (1801, double.NaN))), Rider(heartRate: 160));
        Assert.Equal(150, figures.MeanHeartRateBpm!.Value, 9);
        Assert.Equal(RideKind.Unrated, figures.Kind);
        Assert.Null(figures.Stress);
        Assert.Equal(0, figures.Bands.Total);
    }

    [Fact]
    public void A_ride_under_ten_minutes_has_stress_and_bands_and_no_kind()
    {
        var figures = FiguresOf(Ride(Flat(540, 250)));
        Assert.Equal(RideKind.None, figures.Kind);
        Assert.Equal(15, figures.Stress!.Value, 9);
        Assert.Equal(540, figures.Bands.Total);
    }

    [Fact]
    public void Power_without_any_threshold_gives_work_and_no_shares()
    {
        var figures = FiguresOf(Ride(Flat(3600, 200)), new Rider());
        Assert.Equal(720, figures.WorkKj!.Value, 9);
        Assert.Equal(200, figures.NormalisedPower!.Value.Value, 9);
        Assert.Null(figures.IntensityRatio);
        Assert.Null(figures.Stress);
        Assert.Equal(0, figures.Zones.Total + figures.Bands.Total);
    }

    [Fact]
    public void A_logged_ride_with_normalised_power_has_stress_and_no_kind()
    {
        var logged = Ride(Flat(1, 0)) with
        {
            Grid = SampleGrid.Empty,
            TimerSeconds = 3600,
            Logged = new LoggedFigures(180, 200, 130),
        };
        var figures = FiguresOf(logged);
        Assert.Equal(64, figures.Stress!.Value, 9);
        Assert.Equal(648, figures.WorkKj!.Value, 9);
        Assert.Equal(RideKind.Unrated, figures.Kind);
    }

    [Fact]
    public void A_ride_with_all_its_thresholds_names_where_its_own_came_from()
    {
        var figures = FiguresOf(Ride(Flat(3600, 200)) with { StoredThreshold = new Watts(300) });
        Assert.Equal((250, ThresholdSource.RiderFile), (figures.Threshold!.Power.Value, figures.Threshold.From));
        var stored = FiguresOf(Ride(Flat(3600, 200)) with { StoredThreshold = new Watts(300) }, new Rider());
        Assert.Equal((300, ThresholdSource.Recording), (stored.Threshold!.Power.Value, stored.Threshold.From));
    }

    [Fact]
    public void Timer_time_of_the_recording_is_the_duration_even_where_it_differs_from_the_grid_by_a_second()
    {
        var figures = FiguresOf(Ride(Flat(3600, 250)) with { TimerSeconds = 3601 });
        Assert.Equal(3601 / 36.0, figures.Stress!.Value, 9);
    }
}
