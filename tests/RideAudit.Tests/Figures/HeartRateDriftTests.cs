using RideAudit.Figures;
using RideAudit.Units;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>
/// (EF₁ − EF₂) ÷ EF₁, mean power over mean heart rate: Friel, The Cyclist's Training Bible (from memory). Drift starts after about ten minutes:
/// Coyle and González-Alonso 2001, Exerc Sport Sci Rev 29:88–92 (found). The values are derived.
/// </summary>
public sealed class HeartRateDriftTests
{
    private static readonly BandSeconds AllLow = new(4800, 0, 0);

    [Fact]
    public void Two_hundred_watts_at_140_then_196_at_147_is_a_fifteenth() =>
        Assert.Equal(100.0 / 15, Drift((200, 140), (196, 147))!.Value, 9);

    [Fact]
    public void Two_hundred_watts_at_140_then_190_is_five_percent() =>
        Assert.Equal(5, Drift((200, 140), (190, 140))!.Value, 9);

    [Fact]
    public void A_better_second_half_is_negative() => Assert.True(Drift((190, 140), (200, 140)) < 0);

    [Fact]
    public void The_first_ten_minutes_are_left_out()
    {
        var power = Blocks((600, 20), (2100, 200), (2100, 196));
        var heart = Blocks((600, 180), (2100, 140), (2100, 147));
        Assert.Equal(100.0 / 15, HeartRateDrift.Of(power, heart, 4800, AllLow)!.Value, 9);
    }

    [Fact]
    public void A_ride_under_an_hour_as_shown_has_none()
    {
        Assert.NotNull(HeartRateDrift.Of(Flat(3570, 200), Flat(3570, 140), 3570, new BandSeconds(3570, 0, 0)));
        Assert.Null(HeartRateDrift.Of(Flat(3569, 200), Flat(3569, 140), 3569, new BandSeconds(3569, 0, 0)));
    }

    [Theory]
    [InlineData(3816, true)]
    [InlineData(3815, false)]
    public void It_needs_80_percent_of_the_time_low_as_shown(double low, bool there) =>
        Assert.Equal(there, HeartRateDrift.Of(Flat(4800, 200), Flat(4800, 140), 4800, new BandSeconds(low, 4800 - low, 0)) is not null);

    [Theory]
    [InlineData(480, true)]
    [InlineData(481, false)]
    public void It_needs_nine_tenths_of_both_channels(int missing, bool there)
    {
        var patchy = Blocks((4800 - missing, 140), (missing, double.NaN));
        Assert.Equal(there, HeartRateDrift.Of(Flat(4800, 200), patchy, 4800, AllLow) is not null);
        Assert.Equal(there, HeartRateDrift.Of(patchy, Flat(4800, 140), 4800, AllLow) is not null);
    }

    [Fact]
    public void Seconds_with_only_one_of_the_two_are_left_out()
    {
        // 100 s at a high power without heart rate must not count.
        var power = Blocks((600, 200), (100, 900), (2000, 200), (2100, 196));
        var heart = Blocks((600, 140), (100, double.NaN), (2000, 140), (2100, 147));
        Assert.Equal(100.0 / 15, HeartRateDrift.Of(power, heart, 4800, AllLow)!.Value, 9);
    }

    [Fact]
    public void There_is_none_without_power_in_the_first_half() => Assert.Null(Drift((0, 140), (196, 147)));

    private static double? Drift((double W, double Bpm) first, (double W, double Bpm) second) => HeartRateDrift.Of(
        Blocks((600, first.W), (2100, first.W), (2100, second.W)),
        Blocks((600, first.Bpm), (2100, first.Bpm), (2100, second.Bpm)),
        4800, AllLow);
}
