using RideAudit.Rides;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Rides;

public sealed class RecordingTests
{
    [Theory]
    [InlineData(600, 0.5)]
    [InlineData(290, 1)]
    [InlineData(0, 0)]
    public void Power_coverage_is_the_share_of_the_timer_time_and_never_more_than_all_of_it(double timer, double coverage)
    {
        var recording = Recording("a.fit", Noon, Blocks((300, 200), (300, double.NaN))) with { TimerSeconds = timer };
        Assert.Equal(coverage, recording.PowerCoverage);
    }

    [Theory]
    [InlineData("2026/may/wed.fit", "2026/MAY/wed.fit", true)]
    [InlineData("2026/may/wed.fit", "wed.fit", true)]
    [InlineData("2026/may/wed.fit", "wed", true)]
    [InlineData("2026/may/wed.fit", "thu", false)]
    [InlineData("2026/may/wed", "thu", false)]
    [InlineData("2026/may/wed", "wed", true)]
    [InlineData("2026/may/.fit", "", false)]
    public void A_recording_is_meant_by_its_name_with_or_without_folder_and_ending(string file, string written, bool meant) =>
        Assert.Equal(meant, RecordingNames.Match(file, written));

    [Fact]
    public void A_mean_is_that_of_the_values_there_are()
    {
        Assert.Equal(200, SampleGrid.MeanValue([100, None, 300, 200]));
        Assert.Equal(None, SampleGrid.MeanValue([None, None]));
    }
}
