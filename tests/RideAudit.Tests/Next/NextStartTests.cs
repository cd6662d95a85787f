using System.Globalization;
using NodaTime;
using RideAudit.Ingest;
using RideAudit.Next;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Review;
using RideAudit.Tests.Ingest;
using RideAudit.Units;

namespace RideAudit.Tests.Next;

/// <summary>Where a layout begins: after the last finished week, or in the week begun when something of it is over.</summary>
public sealed class NextStartTests
{
    private static readonly LocalDate Monday = RiddenWeeks.Monday;
    private static readonly Rider Regular = RiddenWeeks.RiderOf(6.5, Experience.Regular);

    [Theory]
    [InlineData(0, "2026-06-16 2026-06-20", "2026-06-22", 1, 0)]
    [InlineData(2, "2026-06-16 2026-06-20", "2026-06-22", 1, 2)]
    [InlineData(2, "2026-06-16 2026-06-23", "2026-06-22", 1, 2)]
    [InlineData(2, "2026-06-16 2026-06-24", "2026-06-22", 1, 3)]
    [InlineData(6, "2026-06-16 2026-06-23", "2026-06-22", 1, 6)]
    [InlineData(6, "2026-06-16 2026-06-28", "2026-06-29", 2, 0)]
    public void What_is_ridden_is_not_laid_out_again(int today, string rides, string startsOn, int weeksBefore, int daysOver)
    {
        var start = NextStart.Of(Log(rides), Regular, On(Monday.PlusDays(today)));
        Assert.Equal((Date(startsOn), weeksBefore, daysOver), (start.StartsOn, start.Past.Length, start.Ridden.Length));
        Assert.Equal((Monday.PlusDays(today), "Europe/Lisbon"), (start.AsOf, start.Zone));
    }

    [Theory]
    [InlineData(0, false, "2026-06-22", 0)]
    [InlineData(2, false, "2026-06-29", 0)]
    [InlineData(0, true, "2026-06-22", 0)]
    [InlineData(2, true, "2026-06-22", 2)]
    public void Without_a_ride_the_first_week_is_the_next_one_and_a_plan_is_looked_at_from_the_week_begun(int today, bool fromWeekBegun, string startsOn, int daysOver)
    {
        var start = NextStart.Of(Log(""), Regular, new ReviewRequest { Today = Monday.PlusDays(today) }, fromWeekBegun);
        Assert.Equal((Date(startsOn), 0, daysOver), (start.StartsOn, start.Past.Length, start.Ridden.Length));
        Assert.Equal(Monday.PlusDays(today), start.AsOf);
        Assert.Equal(Enumerable.Range(0, daysOver).Select(i => Date(startsOn).PlusDays(i)), start.Ridden.Select(d => d.Date));
    }

    [Fact]
    public void A_threshold_that_the_recordings_tell_is_known_from_the_day_before()
    {
        var start = new NextStart { AsOf = Monday, StartsOn = Monday, Past = [], Estimate = new Watts(240) };
        Assert.True(start.IsEstimated);
        Assert.Equal(new ThresholdEntry(Monday.PlusDays(-1), new Watts(240), null), start.Known(Regular with { Thresholds = [] }).Thresholds.Single());
        Assert.Same(Regular, (start with { Estimate = null }).Known(Regular));
    }

    /// <summary>95 % of the best 20 minutes: of the easy ride alone 171 W, of both 237.5 W.</summary>
    [Fact]
    public void Without_a_threshold_power_in_the_rider_file_the_last_recording_tells_it()
    {
        using var folder = new TempFolder().Write("2026-06-16.csv", Seconds("2026-06-16", 180)).Write("2026-06-18.csv", Seconds("2026-06-18", 250)).Write("log.csv", "date,start,minutes,rating\n2026-06-19,18:00,60,3\n");
        Watts? EstimateFor(params ThresholdEntry[] thresholds) =>
            NextStart.Of(Reading.Of(folder), Regular with { Thresholds = [.. thresholds] }, On(Monday)).Estimate;

        Assert.Equal(237.5, EstimateFor()!.Value.Value, 6);
        Assert.Equal(237.5, EstimateFor(new ThresholdEntry(Monday.PlusDays(-30), null, 168))!.Value.Value, 6);
        Assert.Null(EstimateFor(new ThresholdEntry(Monday.PlusDays(-30), null, 168), new ThresholdEntry(Monday.PlusDays(-20), new Watts(260), null)));
    }

    [Fact]
    public void The_week_begins_on_the_riders_first_day()
    {
        var start = NextStart.Of(Log("2026-06-16"), Regular with { Plan = Regular.Plan with { WeekStartsOn = IsoDayOfWeek.Sunday } }, On(Monday));
        Assert.Equal((Monday.PlusDays(-1), 1), (start.StartsOn, start.Ridden.Length));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(17)]
    public void A_programme_has_one_to_sixteen_weeks(int weeks) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => NextBuilder.Build(Log(""), Regular, On(Monday), weeks));

    [Fact]
    public void Rows_of_a_plan_table_stand_in_what_is_laid_out()
    {
        var table = PlanTable.Merge([PlanTableReader.Read("date,kind,minutes,session\n2026-06-23,high,60,track\n", "plan.csv")]);
        var week = NextBuilder.Build(Log(""), Regular, On(Monday), 1, table).Weeks.Single();
        Assert.Equal(("track", true), (week.Days[1].Sessions.Single().Session, week.Days[1].Sessions.Single().Stands));
    }

    private static ReviewRequest On(LocalDate asOf) => new() { Today = asOf, AsOf = asOf };

    // Forty minutes at one power, a row a second.
    private static string Seconds(string date, int watts) =>
        "time,power\n" + string.Concat(Enumerable.Range(0, 2400).Select(s => string.Create(CultureInfo.InvariantCulture, $"{date}T08:{s / 60:00}:{s % 60:00}Z,{watts}\n")));

    private static LocalDate Date(string text) => NodaTime.Text.LocalDatePattern.Iso.Parse(text).Value;

    private static FolderContent Log(string rides) =>
        Reading.Of("log.csv", "date,start,minutes,rating\n" + string.Concat(rides.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(r => $"{r},18:00,60,3\n")));
}
