using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

public class GrowthTests
{
    private static readonly LocalDate Monday = Sample.Monday;

    [Theory]
    [InlineData(6.52, Verdict.Kept)]
    [InlineData(6.53, Verdict.Watch)]
    [InlineData(20, Verdict.Watch)]
    public void Hours_beyond_1_3_times_the_mean_are_worth_a_look_and_never_worse(double hours, Verdict verdict) =>
        Assert.Equal(verdict, Judge("weekly-growth", [5, 5, 5, 5, hours]).Verdict);

    [Fact]
    public void Growth_needs_four_ordinary_weeks() =>
        Assert.Equal("it needs four ordinary weeks before this one", Judge("weekly-growth", [5, 5, 5, 7]).Reason);

    [Theory]
    [InlineData(ExceptionKind.Lighter, Verdict.Kept)]
    [InlineData(ExceptionKind.Away, Verdict.Kept)]
    [InlineData(ExceptionKind.Event, Verdict.Watch)]
    public void Lighter_and_away_weeks_are_no_ordinary_weeks_and_event_weeks_are(ExceptionKind kind, Verdict verdict)
    {
        var lastWeek = new PlanException(Monday.PlusDays(-7), Monday.PlusDays(-1), kind);

        Assert.Equal(verdict, Judge("weekly-growth", [5, 5, 5, 5, 4, 6.3], lastWeek).Verdict);
    }

    [Theory]
    [InlineData(3.75, Verdict.Kept)]
    [InlineData(3.85, Verdict.Watch)]
    public void A_week_lighter_by_its_hours_is_no_ordinary_week(double hours, Verdict verdict) =>
        Assert.Equal(verdict, Judge("weekly-growth", [5, 5, 5, 5, hours, 6.3]).Verdict);

    [Theory]
    [InlineData(6, 1.0, Verdict.Broken)]
    [InlineData(6, 0.33, Verdict.Kept)]
    [InlineData(6, 0.34, Verdict.Broken)]
    [InlineData(5.5, 0.5, Verdict.Kept)]
    [InlineData(5.52, 0.5, Verdict.Kept)]
    [InlineData(5.53, 0.5, Verdict.Broken)]
    public void Added_time_is_mostly_easy(double hours, double hardHours, Verdict verdict)
    {
        var rides = Weeks([5, 5, 5, 5]).Append(Ride(0, hours) with { Bands = new BandSeconds((hours - hardHours) * 3600, 0, hardHours * 3600) });

        Assert.Equal(verdict, Sample.Judge("growth-is-endurance", Sample.Review(rides, Sample.Plan())).Verdict);
    }

    [Theory]
    [InlineData(2.6, Verdict.Kept)]
    [InlineData(2.62, Verdict.Watch)]
    public void A_ride_beyond_1_3_times_the_longest_of_30_days_is_worth_a_look(double hours, Verdict verdict) =>
        Assert.Equal(verdict, Judge("longest-ride-jump", [2, 2, 2, 2, 2, hours]).Verdict);

    [Fact]
    public void A_ride_under_90_minutes_never_jumps() =>
        Assert.Equal(Verdict.Kept, Judge("longest-ride-jump", [0.5, 0.5, 0.5, 0.5, 0.5, 1.49]).Verdict);

    [Fact]
    public void A_jump_needs_30_days_of_history()
    {
        var ride = Sample.Ride(Monday.PlusDays(6), RideKind.Long, 180, 9);

        Assert.Equal(Verdict.NotJudged, Jump([Ride(-23, 1), ride]));
        Assert.Equal(Verdict.Watch, Jump([Ride(-24, 1), ride]));
    }

    [Fact]
    public void A_longer_ride_earlier_in_the_week_is_part_of_the_30_days()
    {
        var rides = Weeks([2, 2, 2, 2, 2]).Concat([Ride(1, 2.5), Ride(6, 3.2)]);

        Assert.Equal(Verdict.Kept, Jump(rides));
    }

    [Theory]
    [InlineData(-28, Verdict.Kept)]
    [InlineData(-29, Verdict.Watch)]
    public void The_30_days_end_on_the_day_before_the_ride(int longRide, Verdict verdict) =>
        Assert.Equal(verdict, Jump([Ride(-60, 1), Ride(longRide, 3), Ride(-10, 2), Ride(2, 3)]));

    [Fact]
    public void A_month_without_rides_leaves_nothing_to_compare_with() =>
        Assert.Equal(Verdict.NotJudged, Jump([Ride(-60, 2), Ride(2, 3)]));

    [Theory]
    [InlineData(new double[] { 6, 6, 6, 4.5 }, Verdict.Kept)]
    [InlineData(new double[] { 6, 6, 6, 4.52 }, Verdict.Kept)]
    [InlineData(new double[] { 6, 6, 6, 4.54 }, Verdict.Watch)]
    [InlineData(new double[] { 6, 4, 6, 6, 6, 6 }, Verdict.Watch)]
    [InlineData(new double[] { 6, 5, 6, 6, 6, 6 }, Verdict.Broken)]
    [InlineData(new double[] { 6, 6, 6, 6, 6 }, Verdict.Watch)]
    [InlineData(new double[] { 6, 6, 6 }, Verdict.NotJudged)]
    public void One_of_four_weeks_is_lighter_and_at_the_latest_one_of_six(double[] hours, Verdict verdict) =>
        Assert.Equal(verdict, Judge("lighter-week", hours).Verdict);

    [Fact]
    public void At_low_volume_no_lighter_week_is_asked_for() =>
        Assert.Equal(Verdict.NotJudged, Sample.Judge("lighter-week", Sample.Review(Weeks([4, 4, 4, 4, 4, 4], last: 0), Sample.Plan(4))).Verdict);

    private static Verdict Jump(IEnumerable<RideFigures> rides) => Sample.Judge("longest-ride-jump", Sample.Review(rides, Sample.Plan())).Verdict;

    private static Finding Judge(string rule, double[] hours, params PlanException[] exceptions) =>
        Sample.Judge(rule, Sample.Review(Weeks(hours, last: 0), Sample.Plan(exceptions: exceptions)));

    /// <summary>One ride a week, on Monday, the last in the week before the judged one or in it.</summary>
    private static IEnumerable<RideFigures> Weeks(double[] hours, int last = -7) =>
        hours.Select((h, i) => Ride(last - 7 * (hours.Length - 1 - i), h));

    private static RideFigures Ride(int day, double hours) =>
        Sample.Ride(Monday.PlusDays(day), RideKind.Endurance, hours * 60, 8) with { Bands = new BandSeconds(hours * 3600, 0, 0) };
}
