using RideAudit.Units;

namespace RideAudit.Tests.Units;

public sealed class UnitsTests
{
    [Fact]
    public void Bands_add_band_by_band_and_know_their_shares()
    {
        var bands = new BandSeconds(300, 50, 20) + new BandSeconds(0, 20, 10);
        Assert.Equal(new BandSeconds(300, 70, 30), bands);
        Assert.Equal((400, 100, 0.75, 0.25), (bands.Total, bands.AboveLow, bands.LowShare!.Value, bands.AboveLowShare!.Value));
    }

    [Fact]
    public void No_time_has_no_shares() => Assert.Equal((null, null), (default(BandSeconds).LowShare, default(BandSeconds).AboveLowShare));

    [Fact]
    public void Zones_add_zone_by_zone()
    {
        var zones = new ZoneSeconds(1, 2, 3, 4, 5, 6, 7) + new ZoneSeconds(7, 6, 5, 4, 3, 2, 1);
        Assert.Equal([8, 8, 8, 8, 8, 8, 8], zones.ToArray());
        Assert.Equal(56, zones.Total);
    }

    [Fact]
    public void Power_is_told_from_its_share_of_threshold() => Assert.Equal(0.8, new Watts(200).ShareOf(new Watts(250)));
}
