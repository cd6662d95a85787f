using RideAudit.Figures;
using RideAudit.Units;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>Seven zones at 55, 75, 90, 105, 120 and 150 % of threshold power: Allen and Coggan (from memory); half-open is our choice. Limits in watts derived, exact.</summary>
public sealed class PowerZonesTests
{
    [Theory]
    [InlineData(250, new[] { 137.5, 187.5, 225, 262.5, 300, 375 })]
    [InlineData(283, new[] { 155.65, 212.25, 254.70, 297.15, 339.60, 424.50 })]
    public void A_power_on_a_limit_is_in_the_zone_above_it_and_a_hair_less_in_the_zone_below(double threshold, double[] limits)
    {
        for (var i = 0; i < limits.Length; i++)
        {
            Assert.Equal(i + 1, PowerZones.ZoneOf(Math.Floor(limits[i] - 1e-9), new Watts(threshold)));
            Assert.Equal(i + 1, PowerZones.ZoneOf(limits[i] - 0.001, new Watts(threshold)));
            Assert.Equal(i + 2, PowerZones.ZoneOf(limits[i] + 0.001, new Watts(threshold)));
            Assert.Equal(i + 2, PowerZones.ZoneOf(Math.Ceiling(limits[i] + 1e-9), new Watts(threshold)));
        }
    }

    [Theory]
    [InlineData(137, 1)]
    [InlineData(137.5, 2)]
    [InlineData(138, 2)]
    [InlineData(187, 2)]
    [InlineData(188, 3)]
    [InlineData(225, 4)]
    [InlineData(224, 3)]
    [InlineData(262, 4)]
    [InlineData(263, 5)]
    [InlineData(300, 6)]
    [InlineData(299, 5)]
    [InlineData(375, 7)]
    [InlineData(374, 6)]
    [InlineData(0, 1)]
    public void Whole_watts_around_every_limit_at_threshold_250(double watts, int zone) =>
        Assert.Equal(zone, PowerZones.ZoneOf(watts, new Watts(250)));

    [Fact]
    public void Every_limit_that_is_a_whole_watt_is_in_the_zone_above_at_every_threshold()
    {
        // Binary 0.55 × T may miss equality; comparing 100·P with 55·T cannot.
        for (var threshold = 50; threshold <= 700; threshold++)
            for (var zone = 1; zone <= 6; zone++)
                if (PowerZones.UpperLimitsPercent[zone - 1] * threshold % 100 == 0)
                    Assert.Equal(zone + 1, PowerZones.ZoneOf(PowerZones.UpperLimitsPercent[zone - 1] * threshold / 100, new Watts(threshold)));
    }

    [Fact]
    public void Seconds_without_power_are_in_no_zone()
    {
        var zones = PowerZones.Of(Blocks((10, 100), (7, double.NaN), (5, 400)), new Watts(250));
        Assert.Equal([10, 0, 0, 0, 0, 0, 5], zones.ToArray());
    }

    // 55 % of 249 W are 136.95 W and 105 % are 261.45 W, neither of which a 32-bit sample holds exactly.
    [Theory]
    [InlineData(136.94f, 1)]
    [InlineData(136.95f, 2)]
    [InlineData(261.44f, 4)]
    [InlineData(261.45f, 5)]
    public void A_sample_in_hundredths_of_a_watt_exactly_on_a_limit_is_in_the_zone_above(float watts, int zone) =>
        Assert.Equal(1, PowerZones.Of([watts], new Watts(249)).ToArray()[zone - 1]);
}
