using RideAudit.Fit.Tests.Hazards;

namespace RideAudit.Fit.Tests.Reading;

public class ChannelChoiceTests
{
    private static readonly byte[] Ride = RideBuilder.Whole(700).Finish();

    [Fact]
    public void Channels_that_are_not_asked_for_are_missing_and_the_others_are_the_same()
    {
        var all = Assert.Single(FitDecoder.Decode(Ride).Parts).Records;
        var some = Assert.Single(FitDecoder.Decode(Ride, new FitDecodeOptions { Channels = FitChannels.Power | FitChannels.Speed }).Parts).Records;
        Assert.Equal(all.Timestamps.ToArray(), some.Timestamps.ToArray());
        Assert.Equal(all.Power.ToArray(), some.Power.ToArray());
        Assert.Equal(all.SpeedMps.ToArray(), some.SpeedMps.ToArray());
        Assert.Contains(all.HeartRate.ToArray(), bpm => !float.IsNaN(bpm));
        Assert.All(some.HeartRate.ToArray(), bpm => Assert.True(float.IsNaN(bpm)));
        Assert.All(some.DistanceM.ToArray(), metres => Assert.True(double.IsNaN(metres)));
        Assert.Equal(700, some.Cadence.Length);
        Assert.Equal(all.Declared & (FitChannels.Power | FitChannels.Speed), some.Declared);
    }

    [Fact]
    public void Arrays_given_back_and_lent_again_hold_nothing_of_the_file_before()
    {
        var expected = Values(FitDecoder.Decode(Ride));
        using (var longer = FitDecoder.Decode(RideBuilder.Whole(5_000).Finish()))
            Assert.Equal(5_000, longer.Parts[0].Records.Count);
        using var file = FitDecoder.Decode(Ride);
        Assert.Equal(expected, Values(file));
    }

    [Fact]
    public void A_file_that_is_done_with_has_no_records()
    {
        var file = FitDecoder.Decode(Ride);
        file.Dispose();
        Assert.Equal((0, 0), (file.Parts[0].Records.Count, file.Parts[0].Records.Power.Length));
    }

    private static string Values(FitFile file)
    {
        var records = file.Parts[0].Records;
        return string.Join(' ', [.. records.Power, .. records.HeartRate, .. records.Cadence, .. records.SpeedMps, .. records.AltitudeM])
            + string.Join(' ', records.DistanceM.ToArray());
    }
}
