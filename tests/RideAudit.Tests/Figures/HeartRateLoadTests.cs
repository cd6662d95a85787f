using RideAudit.Figures;
using RideAudit.Plan;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>
/// Minutes × x × a·e^(b·x); a, b = 0.64, 1.92 for men and 0.86, 1.67 for women: Banister 1991, in MacDougall, Wenger and Green (eds),
/// Physiological Testing of Elite Athletes, 403–424 (from memory). The values are derived.
/// </summary>
public sealed class HeartRateLoadTests
{
    [Theory]
    [InlineData(1, 1, 4.3654, 4.5685)]
    [InlineData(30, 0.5, 25.0723, 29.7321)]
    [InlineData(60, 0.7, 103.0673, 116.2621)]
    [InlineData(45, 0.8, 107.0431, 117.7656)]
    [InlineData(30, 0.9, 97.2758, 104.3775)]
    public void The_unscaled_load_agrees_with_the_table(double minutes, double share, double men, double women)
    {
        Assert.Equal(men, HeartRateLoad.Unscaled(minutes, share, Sex.Male), 1e-3);
        Assert.Equal(women, HeartRateLoad.Unscaled(minutes, share, Sex.Female), 1e-3);
    }

    [Theory]
    [InlineData(Sex.Male, 122.3480, 103.0673)]
    [InlineData(Sex.Female, 134.1096, 116.2621)]
    public void It_is_summed_per_sample_not_taken_from_the_mean(Sex sex, double summed, double fromMean)
    {
        // 30 min at x = 0.5 and 30 min at 0.9; rest 50, max 190: 120 and 176 bpm. Scaled by an hour at threshold 148 (x = 0.7).
        var rider = Rider(sex: sex, rest: 50, max: 190);
        var load = HeartRateLoad.Of(Blocks((1800, 120), (1800, 176)), 3600, rider, 148)!.Value;
        Assert.Equal(summed / fromMean * 100, load, 1e-3);
    }

    [Theory]
    [InlineData(Sex.Male)]
    [InlineData(Sex.Female)]
    [InlineData(Sex.Unset)]
    public void An_hour_at_threshold_heart_rate_is_100_points(Sex sex) =>
        Assert.Equal(100, HeartRateLoad.Of(Flat(3600, 168), 3600, Rider(sex: sex), 168)!.Value, 9);

    [Fact]
    public void Without_a_sex_the_mean_of_both_constants_is_used() =>
        Assert.Equal(60 * 0.7 * 0.75 * Math.Exp(1.795 * 0.7), HeartRateLoad.Unscaled(60, 0.7, Sex.Unset), 9);

    [Fact]
    public void Below_resting_heart_rate_nothing_is_added_and_nothing_taken_off()
    {
        // Our choice: clamped to 0.
        Assert.Equal(0, HeartRateLoad.Unscaled(60, -0.2, Sex.Male));
        Assert.Equal(0, HeartRateLoad.Of(Flat(600, 40), 600, Rider(), 168)!.Value);
    }

    [Fact]
    public void Fractions_of_a_beat_count_as_they_are()
    {
        var halves = HeartRateLoad.Of(Flat(3600, 167.5), 3600, Rider(sex: Sex.Male), 168)!.Value;
        Assert.Equal(HeartRateLoad.Unscaled(60, 119.5 / 140, Sex.Male) / HeartRateLoad.Unscaled(60, 120.0 / 140, Sex.Male) * 100, halves, 6);
    }

    [Fact]
    public void Seconds_without_heart_rate_count_at_the_mean_rate_of_the_others()
    {
        var heart = Blocks((1800, 168), (1800, double.NaN));
        Assert.Equal(100, HeartRateLoad.Of(heart, 3600, Rider(), 168)!.Value, 9);
    }

    [Fact]
    public void Without_a_second_of_heart_rate_there_is_no_load() => Assert.Null(HeartRateLoad.Of([None, None], 2, Rider(), 168));

    [Theory]
    [InlineData(255)]
    [InlineData(256)]
    [InlineData(300)]
    public void A_heart_rate_of_any_height_counts_as_it_is(double bpm)
    {
        // Rest 48, maximum 188, threshold 168, as Rider() has them.
        var expected = HeartRateLoad.Unscaled(60, (bpm - 48) / 140, Sex.Male) / HeartRateLoad.Unscaled(60, 120 / 140.0, Sex.Male) * 100;
        Assert.Equal(expected, HeartRateLoad.Of(Flat(3600, bpm), 3600, Rider(sex: Sex.Male), 168)!.Value, 6);
    }

    [Theory]
    [InlineData(null, 188.0, 168)]
    [InlineData(48.0, null, 168)]
    [InlineData(190.0, 188.0, 168)]
    [InlineData(48.0, 188.0, 48)]
    public void Without_the_heart_rates_it_needs_there_is_no_load(double? rest, double? max, double threshold) =>
        Assert.Null(HeartRateLoad.Of(Flat(3600, 150), 3600, Rider(rest: rest, max: max), threshold));
}
