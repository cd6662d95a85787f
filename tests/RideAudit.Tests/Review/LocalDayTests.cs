using NodaTime;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Tests.Support;
using RideAudit.Weeks;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Review;

/// <summary>A ride belongs to the local day and week of its start. Time-zone rules from the IANA database; dates worked out by hand.</summary>
public sealed class LocalDayTests
{
    private static readonly Rider Anyone = Made.Rider();

    [Fact]
    public void A_ride_at_Sunday_2330_local_stays_in_Sundays_week()
    {
        // Sunday 10 May 2026, 23:30 at UTC−5 is Monday 04:30 UTC.
        var ride = At(new LocalDateTime(2026, 5, 10, 23, 30), "America/Bogota", 5400);
        var week = Folders.Review([ride], Anyone, new LocalDate(2026, 5, 11)).Week;
        Assert.Equal((new LocalDate(2026, 5, 4), 1), (week.StartsOn, week.RideCount));
        Assert.Equal(1.5, week.Days[6].Hours);
    }

    [Fact]
    public void East_of_Greenwich_an_early_Monday_ride_is_not_last_weeks()
    {
        // Monday 11 May 2026, 06:00 in Tokyo is Sunday 21:00 UTC.
        var ride = At(new LocalDateTime(2026, 5, 11, 6, 0), "Asia/Tokyo", 3600);
        var week = Folders.Review([ride], Anyone, new LocalDate(2026, 5, 18)).Week;
        Assert.Equal((new LocalDate(2026, 5, 11), 1.0), (week.StartsOn, week.Days[0].Hours));
    }

    [Fact]
    public void A_ride_over_midnight_is_all_on_the_day_it_began()
    {
        var ride = At(new LocalDateTime(2026, 5, 6, 23, 0), "Europe/Lisbon", 7200);
        var days = Folders.Review([ride], Anyone, new LocalDate(2026, 5, 11)).Week.Days;
        Assert.Equal((2.0, 0.0), (days[2].Hours, days[3].Hours));
    }

    [Fact]
    public void A_recording_cut_at_midnight_is_one_ride_of_the_day_it_began()
    {
        var before = At(new LocalDateTime(2026, 5, 6, 23, 0), "Europe/Lisbon", 3600);
        var after = At(new LocalDateTime(2026, 5, 7, 0, 0), "Europe/Lisbon", 3600);
        var review = Folders.Review([after, before], Anyone, new LocalDate(2026, 5, 11));
        Assert.Equal((2.0, 0.0), (review.Week.Days[2].Hours, review.Week.Days[3].Hours));
        Assert.Equal((3600 * 2, 2), (review.Rides[0].DurationSeconds, review.Rides[0].Parts.Length));
    }

    [Fact]
    public void The_day_the_clocks_go_forward_has_its_rides_and_seven_days_a_week()
    {
        // Lisbon, Sunday 29 March 2026: 01:00 becomes 02:00. A ride from 00:30 to 02:30 by the clock lasts an hour.
        var ride = At(new LocalDateTime(2026, 3, 29, 0, 30), "Europe/Lisbon", 3600);
        var evening = At(new LocalDateTime(2026, 3, 29, 23, 30), "Europe/Lisbon", 3600);
        var week = Folders.Review([ride, evening], Anyone, new LocalDate(2026, 3, 30)).Week;
        Assert.Equal((new LocalDate(2026, 3, 23), 2.0), (week.StartsOn, week.Days[6].Hours));
    }

    [Fact]
    public void Both_half_past_ones_of_the_day_the_clocks_go_back_are_on_that_day()
    {
        // Lisbon, Sunday 25 October 2026: 02:00 becomes 01:00.
        var zone = DateTimeZoneProviders.Tzdb["Europe/Lisbon"];
        var map = zone.MapLocal(new LocalDateTime(2026, 10, 25, 1, 30));
        Assert.Equal(2, map.Count);
        Recording First(string file, ZonedDateTime at) => Recording(file, at.ToInstant(), Flat(600, 200), offset: at.Offset);
        var week = Folders.Review([First("a", map.First()), First("b", map.Last())], Anyone, new LocalDate(2026, 10, 26)).Week;
        Assert.Equal((600 * 2 / 3600.0, 1), (Math.Round(week.Days[6].Hours * 3) / 3, week.RideCount));
    }

    [Fact]
    public void Rides_on_or_after_the_as_of_date_are_ignored()
    {
        Recording[] rides = [At(new LocalDateTime(2026, 5, 5, 18, 0), "UTC", 3600), At(new LocalDateTime(2026, 5, 11, 0, 0), "UTC", 3600)];
        var review = Folders.Review(rides, Anyone, new LocalDate(2026, 5, 11));
        Assert.Equal((1, new LocalDate(2026, 5, 4)), (review.Week.RideCount, review.Week.StartsOn));
        Assert.Single(review.History);
    }

    [Fact]
    public void A_week_may_start_on_another_day_and_then_has_no_number()
    {
        var rider = Anyone with { Plan = new TrainingPlan { WeekStartsOn = IsoDayOfWeek.Sunday } };
        var week = Folders.Review([At(new LocalDateTime(2026, 5, 10, 9, 0), "UTC", 3600)], rider, new LocalDate(2026, 5, 17)).Week;
        Assert.Equal((new LocalDate(2026, 5, 10), null, 1.0), (week.StartsOn, week.IsoWeek, week.Days[0].Hours));
    }

    [Fact]
    public void Other_sports_count_in_hours_of_other_activity_and_in_nothing_else()
    {
        var run = Recording("run.fit", Instant.FromUtc(2026, 5, 6, 12, 0), seconds: 2400, sport: RideSport.Other);
        var week = Folders.Review([At(new LocalDateTime(2026, 5, 5, 18, 0), "UTC", 3600), run], Anyone, new LocalDate(2026, 5, 11)).Week;
        Assert.Equal((1, 1.0, 0.67, 3600), (week.RideCount, week.Hours, Math.Round(week.OtherActivityHours, 2), week.BandSeconds.Low + week.BandSeconds.Middle + week.BandSeconds.High));
        Assert.Equal(((DayKind?)DayKind.Recovery, 0.0), (week.Days[2].Kind, week.Days[2].Hours));
        Assert.Equal(DayKind.Rest, week.Days[3].Kind);
    }

    private static Recording At(LocalDateTime local, string zone, int seconds)
    {
        var at = local.InZoneStrictly(DateTimeZoneProviders.Tzdb[zone]);
        return Recording(local.ToString("uuuuMMddHHmm", null) + ".fit", at.ToInstant(), Flat(seconds, 150), offset: at.Offset);
    }
}
