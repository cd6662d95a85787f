using NodaTime;
using RideAudit.Figures;
using RideAudit.Rides;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>Values derived: efforts on the line of 250 W and 20 kJ.</summary>
public sealed class ThresholdOpinionTests
{
    private static readonly LocalDate Today = new(2026, 5, 10);

    [Fact]
    public void Efforts_on_three_days_give_critical_power_beside_the_95_percent_estimate()
    {
        var opinion = Of(Effort(1, 180), Effort(3, 720), Effort(5, 1200));
        Assert.Equal(250, opinion.Critical!.Value.Power.Value, 3);
        Assert.Equal(20_000, opinion.Critical.Value.WorkAboveJ, 0);
        Assert.Equal([180, 720, 1200], opinion.Efforts.Select(e => e.Best.DurationSeconds));
        // Best 20 minutes 250 + 20,000 ÷ 1200 = 266.667 W, 95 % of it 253.333 W.
        Assert.Equal(253.333, opinion.Estimate!.Value.Value, 3);
        Assert.Equal(Today.PlusDays(-5), opinion.BestTwentyMinutes!.Date);
    }

    [Fact]
    public void Best_means_inside_one_longer_effort_are_not_efforts_of_their_own()
    {
        // One even 20 minutes holds the best 3, 5 and 12 minutes as well: one effort, no line.
        var opinion = Of(Effort(1, 1200));
        Assert.Null(opinion.Critical);
        Assert.Empty(opinion.Efforts);
        Assert.NotNull(opinion.Estimate);
    }

    [Fact]
    public void Two_separate_efforts_are_too_few() => Assert.Null(Of(Effort(1, 180), Effort(3, 1200)).Critical);

    [Theory]
    [InlineData(89, true)]
    [InlineData(90, false)]
    public void Ninety_days_count(int days, bool counts) => Assert.Equal(counts, Of(Effort(days, 1200)).Estimate is not null);

    [Fact]
    public void Rides_after_the_day_are_left_out() => Assert.Null(Of(Effort(-1, 1200)).Estimate);

    [Fact]
    public void Without_power_there_is_no_opinion()
    {
        var opinion = ThresholdOpinion.Of([FiguresOf(Ride(null, Flat(3600, 140)))], Today);
        Assert.Equal((null, null), (opinion.Estimate, opinion.Critical));
    }

    [Fact]
    public void The_day_itself_counts() => Assert.NotNull(Of(Effort(0, 1200)).Estimate);

    [Fact]
    public void Of_equal_efforts_the_earlier_is_named_and_of_one_start_the_first_by_name()
    {
        Assert.Equal("7.fit", Of(Effort(3, 1200), Effort(7, 1200), Effort(5, 1200)).BestTwentyMinutes!.File);
        Ride[] atOnce = [Effort(3, 1200) with { File = "b.fit" }, Effort(3, 1200) with { File = "a.fit" }];
        Assert.Equal("a.fit", Of(atOnce).BestTwentyMinutes!.File);
    }

    [Fact]
    public void Sprints_and_hours_are_no_efforts_of_the_line()
    {
        var hour = Ride(
            Blocks((600, 100), (3600, 240), (600, 100)), start: Today.PlusDays(-7).At(new LocalTime(12, 0)).InUtc().ToInstant(), file: "hour.fit");
        Assert.Equal([180, 720, 1200], Of(Effort(1, 180), Effort(3, 720), Effort(5, 1200), Effort(8, 5), Effort(9, 60), hour).Efforts.Select(e => e.Best.DurationSeconds));
    }

    [Theory]
    [InlineData(0, 300, 300, false)]
    [InlineData(0, 301, 300, true)]
    [InlineData(600, 60, 300, false)]
    [InlineData(599, 60, 300, true)]
    [InlineData(400, 60, 300, true)]
    [InlineData(700, 60, 300, false)]
    public void Efforts_that_touch_share_no_riding(int start, int seconds, int otherStart, bool overlaps)
    {
        var (one, other) = (new PowerEffort("a.fit", Today, new BestPower(seconds, 300, start)), new PowerEffort("a.fit", Today, new BestPower(300, 300, otherStart)));
        Assert.Equal((overlaps, overlaps), (one.Overlaps(other), other.Overlaps(one)));
        Assert.False(one.Overlaps(other with { File = "b.fit" }));
    }

    private static ThresholdOpinion Of(params Ride[] rides) => ThresholdOpinion.Of(rides.Select(r => FiguresOf(r)), Today);

    /// <summary>A ride with one effort on the line, easy riding around it.</summary>
    private static Ride Effort(int daysAgo, int seconds)
    {
        var watts = 250 + 20_000.0 / seconds;
        return Ride(
            Blocks((600, 100), (seconds, watts), (600, 100)),
            start: Today.PlusDays(-daysAgo).At(new LocalTime(12, 0)).InUtc().ToInstant(), file: $"{daysAgo}.fit");
    }
}
