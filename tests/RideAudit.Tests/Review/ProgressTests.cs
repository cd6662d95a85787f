using NodaTime;
using RideAudit.Document;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Tests.Support;
using RideAudit.Units;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Review;

/// <summary>What the season says of whether the rider improves. The windows and halves are our choice; the values are derived.</summary>
public sealed class ProgressTests
{
    private static readonly LocalDate AsOf = new(2026, 5, 11);

    [Fact]
    public void Of_rides_without_power_nothing_is_measured_and_nothing_claimed()
    {
        var progress = Folders.Review([Recording("a.fit", Start(3), null, Flat(3600, 130))], new Rider(), AsOf).Progress!;
        Assert.Null(progress.EasyHeartRateBpm);
        Assert.Empty(progress.EasyPowerW);
        Assert.Empty(progress.Bests);
        Assert.Null(progress.ThresholdEvidenceOn);
        Assert.Equal("Power at one easy heart rate: nothing measured yet.", progress.EasyPower.Sentence.Plain());
        Assert.Equal("No threshold power is known.", progress.Threshold.Sentence.Plain());
    }

    [Theory]
    [InlineData(1, "Power at one easy heart rate: only one ride, too few to say.")]
    [InlineData(2, "Power at one easy heart rate: only two rides, too few to say.")]
    [InlineData(3, "At 130 bpm easy rides gave 160 W lately, 160 W before.")]
    public void Nothing_is_claimed_from_fewer_than_three_rides(int rides, string words) =>
        Assert.Equal(words, Progress([.. Enumerable.Range(1, rides).Select(day => Easy(3 * day, 160, 130))]).EasyPower.Sentence.Plain());

    [Fact]
    public void The_newer_half_is_compared_with_the_older_and_the_middle_ride_is_of_the_newer()
    {
        var progress = Progress(Easy(50, 150, 130), Easy(40, 152, 130), Easy(30, 160, 130), Easy(20, 161, 130), Easy(10, 162, 130));
        Assert.Equal([150.0, 152, 160, 161, 162], progress.EasyPowerW.Select(p => p.Value));
        Assert.Equal("At 130 bpm easy rides gave 161 W lately, 151 W before.", progress.EasyPower.Sentence.Plain());
    }

    [Fact]
    public void A_ride_at_another_heart_rate_says_nothing_at_this_one()
    {
        var progress = Progress(Easy(50, 150, 130), Easy(40, 151, 134), Easy(30, 152, 126), Easy(20, 175, 135), Easy(10, 120, 100));
        Assert.Equal(130, progress.EasyHeartRateBpm);
        Assert.Equal([150.0, 151, 152], progress.EasyPowerW.Select(p => p.Value));
    }

    [Fact]
    public void One_stretch_is_too_little_of_a_ride()
    {
        // 600 s left out, then one stretch of 300 s, against two.
        var one = Recording("one.fit", Start(20), Flat(1100, 140), Flat(1100, 130));
        var two = Recording("two.fit", Start(10), Flat(1200, 150), Flat(1200, 130));
        Assert.Equal(["two.fit"], Progress(one, two).EasyPowerW.Select(p => p.File));
    }

    [Fact]
    public void Hard_rides_are_not_easy_however_long_they_warm_up()
    {
        var hard = Recording("hard.fit", Start(5), Blocks((2400, 150), (1200, 245)), Blocks((2400, 130), (1200, 165)));
        Assert.Equal(["10.fit"], Progress(Easy(10, 160, 130), hard).EasyPowerW.Select(p => p.File));
    }

    [Fact]
    public void Weeks_without_riding_between_change_nothing_and_half_a_year_ago_is_another_season()
    {
        // The reviewed week's last day is the day before; 182 days before that is out.
        var progress = Progress(Easy(183, 100, 130), Easy(182, 150, 130), Easy(90, 155, 130), Easy(2, 165, 130));
        Assert.Equal([150.0, 155, 165], progress.EasyPowerW.Select(p => p.Value));
        Assert.Equal("At 130 bpm easy rides gave 160 W lately, 150 W before.", progress.EasyPower.Sentence.Plain());
    }

    [Fact]
    public void Bests_go_by_six_weeks_that_end_with_the_week_and_weeks_without_power_leave_their_block_out()
    {
        // Blocks end on 10 May, 29 March, 15 February and 4 January; none was ridden in the second but last.
        var progress = Progress(Best(130, 300), Best(50, 310), Best(3, 305));
        Assert.Equal([new LocalDate(2025, 11, 24), new LocalDate(2026, 2, 16), new LocalDate(2026, 3, 30)], progress.Bests.Select(b => b.StartsOn));
        Assert.Equal([300.0, 310, 305], progress.Bests.Select(b => b.Bests[1].MeanPowerW));
        Assert.Equal([null, 300.0, 310.0], progress.Bests.Select(b => b.Bests[1].BestBeforeW));
        Assert.Equal("No best of the last six weeks is above all before.", progress.Best.Sentence.Plain());
    }

    [Fact]
    public void A_best_above_all_before_is_named_with_its_window()
    {
        var progress = Progress(Best(130, 300), Best(50, 310), Best(3, 320));
        Assert.Equal("The last six weeks hold the best 1 min, 5 min and 20 min so far.", progress.Best.Sentence.Plain());
    }

    [Theory]
    [InlineData(42, false)]
    [InlineData(43, true)]
    public void A_threshold_set_more_than_six_weeks_ago_asks_for_a_test(int daysOld, bool test)
    {
        var lastDay = AsOf.PlusDays(-1);
        var rider = new Rider { Thresholds = [new ThresholdEntry(lastDay.PlusDays(-daysOld), new Watts(250), null)] };
        var progress = Folders.Review([Easy(3, 160, 130)], rider, AsOf).Progress!;
        Assert.Equal((daysOld, test), (progress.ThresholdEvidenceDays!.Value, progress.TestThreshold));
        Assert.Equal($"Threshold power 250 W, {daysOld} days old{(test ? ": test it again" : "")}.", progress.Threshold.Sentence.Plain());
    }

    [Fact]
    public void An_estimates_evidence_is_as_old_as_the_twenty_minutes_it_comes_from()
    {
        var rides = Enumerable.Range(1, 8).Select(n => Easy(5 * n, 150, 130)).Append(Best(23, 260)).ToArray();
        var progress = Folders.Review(rides, new Rider(), AsOf).Progress!;
        Assert.Equal(AsOf.PlusDays(-23), progress.ThresholdEvidenceOn);
        Assert.Equal(22, progress.ThresholdEvidenceDays);
    }

    private static ProgressEntry Progress(params Recording[] rides) => Folders.Review(rides, Made.Rider(), AsOf).Progress!;

    private static Recording Easy(int daysAgo, double watts, double bpm) => Recording($"{daysAgo}.fit", Start(daysAgo), Flat(3600, watts), Flat(3600, bpm));

    private static Recording Best(int daysAgo, double watts) => Recording($"{daysAgo}-best.fit", Start(daysAgo), Blocks((900, 100), (1200, watts), (900, 100)));

    private static Instant Start(int daysAgo) => AsOf.PlusDays(-daysAgo).At(new LocalTime(12, 0)).InUtc().ToInstant();
}
