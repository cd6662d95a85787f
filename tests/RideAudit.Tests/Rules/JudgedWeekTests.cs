using NodaTime;
using RideAudit.Figures;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

/// <summary>A week as the rules look at it: at its easiest and its hardest, and with stress that is not known.</summary>
public sealed class JudgedWeekTests
{
    private static readonly LocalDate Monday = Sample.Monday;

    /// <summary>A fifth without known stress is as much as may be, in the week and together with the days before.</summary>
    [Theory]
    [InlineData(20, 80, 0, 0, false)]
    [InlineData(22, 78, 0, 0, true)]
    [InlineData(20, 80, 20, 80, false)]
    [InlineData(10, 90, 34, 66, true)]
    [InlineData(0, 0, 34, 66, true)]
    [InlineData(0, 0, 0, 0, false)]
    public void Stress_is_patchy_beyond_its_share(int unknown, int known, int unknownBefore, int knownBefore, bool patchy)
    {
        RideFigures[] rides = [On(0, unknown, 6) with { Stress = null }, On(0, known), On(-1, unknownBefore, 6) with { Stress = null }, On(-1, knownBefore)];
        var plan = Sample.WithLimits(("stress_unknown_share_at_most", 0.2));

        Assert.Equal(patchy, new JudgedWeek(Sample.Review(rides.Where(r => r.DurationSeconds > 0), plan)).StressIsPatchy(7));
    }

    [Fact]
    public void A_ride_that_nothing_could_rate_is_read_as_easy_and_as_hard_as_it_may_have_been()
    {
        RideFigures Unrated(int day, int minutes) => Sample.Ride(Monday.PlusDays(day), RideKind.Unrated, minutes);
        var rated = On(6, 60);
        var week = new JudgedWeek(Sample.Review([Unrated(-1, 60), Unrated(0, 75), Unrated(1, 76), Unrated(2, 142), Unrated(3, 143), rated], Sample.Plan()));

        Assert.Equal([RideKind.Recovery, RideKind.Endurance, RideKind.Endurance, RideKind.Long, rated.Kind], week.Easiest.Week.Rides.Select(r => r.Kind));
        Assert.Equal([RideKind.High, RideKind.High, RideKind.High, RideKind.High, rated.Kind], week.Hardest.Week.Rides.Select(r => r.Kind));
        Assert.Equal((RideKind.Recovery, RideKind.High), (week.Easiest.DayBefore!.Rides[0].Kind, week.Hardest.DayBefore!.Rides[0].Kind));
        Assert.Equal(rated.Bands, week.Easiest.Week.Rides.Last().Bands);
        Assert.Same(week.Easiest, week.Easiest);
        Assert.Same(week.Hardest, week.Hardest);
    }

    [Fact]
    public void A_ride_that_nothing_could_rate_is_found_in_the_week_and_where_asked_on_the_day_before()
    {
        JudgedWeek Week(params RideFigures[] rides) => new(Sample.Review([.. rides, On(3)], Sample.Plan()));
        var unrated = Sample.Ride(Monday, RideKind.Unrated, 60);

        Assert.Equal((true, true), (Week(unrated).HasUnrated(false), Week(unrated).HasUnrated(true)));
        Assert.Equal((false, true), (Week(ChangedRide.On(unrated, Monday.PlusDays(-1))).HasUnrated(false), Week(ChangedRide.On(unrated, Monday.PlusDays(-1))).HasUnrated(true)));
        Assert.Equal((false, false), (Week().HasUnrated(false), Week(On(-1)).HasUnrated(true)));
    }

    private static RideFigures On(int day, int minutes = 60, int hour = 18) => Sample.Ride(Monday.PlusDays(day), RideKind.Endurance, minutes, hour);
}
