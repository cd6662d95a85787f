using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Units;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>95 % of the best 20 minutes: Allen and Coggan (from memory); its error: Karsten et al. 2021, Front Physiol (found). Values derived.</summary>
public sealed class ThresholdBookTests
{
    private static readonly Rider Dated = new()
    {
        Thresholds =
        [
            new ThresholdEntry(new LocalDate(2026, 3, 1), new Watts(240), 165),
            new ThresholdEntry(new LocalDate(2026, 4, 1), null, 170),
            new ThresholdEntry(new LocalDate(2026, 5, 1), new Watts(260), null),
        ],
    };

    [Theory]
    [InlineData(2026, 2, 28, 240, ThresholdSource.RiderFileFirstEntry, 165)]
    [InlineData(2026, 3, 1, 240, ThresholdSource.RiderFile, 165)]
    [InlineData(2026, 4, 1, 240, ThresholdSource.RiderFile, 170)]
    [InlineData(2026, 4, 30, 240, ThresholdSource.RiderFile, 170)]
    [InlineData(2026, 5, 1, 260, ThresholdSource.RiderFile, 170)]
    [InlineData(2027, 5, 1, 260, ThresholdSource.RiderFile, 170)]
    public void The_latest_dated_entry_on_or_before_the_ride_counts(int year, int month, int day, double watts, ThresholdSource from, double bpm)
    {
        var ride = On(new LocalDate(year, month, day), 200);
        var book = new ThresholdBook(Dated, [ride]);
        Assert.Equal((watts, from), (book.PowerFor(ride)!.Power.Value, book.PowerFor(ride)!.From));
        Assert.Equal(bpm, book.HeartRateFor(ride.Date));
    }

    [Fact]
    public void A_file_that_stores_a_threshold_is_asked_only_when_the_rider_file_has_none()
    {
        var ride = On(new LocalDate(2026, 5, 5), 200) with { StoredThreshold = new Watts(222) };
        Assert.Equal(222, new ThresholdBook(new Rider(), [ride]).PowerFor(ride)!.Power.Value);
        Assert.Equal(260, new ThresholdBook(Dated, [ride]).PowerFor(ride)!.Power.Value);
    }

    [Fact]
    public void An_estimate_is_95_percent_of_the_best_20_minutes_before()
    {
        // 300 W → 285 W, exact.
        var before = On(new LocalDate(2026, 5, 1), 300);
        var ride = On(new LocalDate(2026, 5, 5), 400);
        var found = new ThresholdBook(new Rider(), [before, ride]).PowerFor(ride)!;
        Assert.Equal(285, found.Power.Value, 9);
        Assert.Equal((ThresholdSource.Estimate, 1, 4), (found.From, found.PoweredRidesBefore, found.DaysOfHistory));
        Assert.True(found.IsEstimate && found.IsThin);
    }

    [Fact]
    public void Of_several_rides_before_the_best_counts()
    {
        var ride = On(new LocalDate(2026, 5, 5), 200);
        Assert.Equal(285, new ThresholdBook(new Rider(), [On(ride.Date.PlusDays(-3), 280), On(ride.Date.PlusDays(-2), 300), On(ride.Date.PlusDays(-1), 250), ride]).PowerFor(ride)!.Power.Value, 9);
    }

    [Fact]
    public void The_ride_itself_and_later_ones_are_left_out()
    {
        var ride = On(new LocalDate(2026, 5, 5), 400);
        Assert.Null(new ThresholdBook(new Rider(), [ride, On(new LocalDate(2026, 5, 6), 300)]).PowerFor(ride));
    }

    [Theory]
    [InlineData(90, true)]
    [InlineData(91, false)]
    public void It_looks_back_90_days(int days, bool found)
    {
        var ride = On(new LocalDate(2026, 5, 5), 200);
        var book = new ThresholdBook(new Rider(), [On(ride.Date.PlusDays(-days), 300), ride]);
        Assert.Equal(found, book.PowerFor(ride) is not null);
    }

    [Theory]
    [InlineData(6, 14, false)]
    [InlineData(5, 14, true)]
    [InlineData(6, 13, true)]
    public void It_is_thin_with_fewer_than_six_powered_rides_over_14_days(int rides, int days, bool thin)
    {
        var ride = On(new LocalDate(2026, 5, 5), 200);
        ImmutableArray<Ride> all = [On(ride.Date.PlusDays(-days), 250), .. Enumerable.Range(1, rides - 1).Select(i => On(ride.Date.PlusDays(-i), 250)), ride];
        Assert.Equal(thin, new ThresholdBook(new Rider(), all).PowerFor(ride)!.IsThin);
    }

    [Fact]
    public void A_ride_whose_power_covers_less_than_half_of_it_estimates_nothing()
    {
        var patchy = On(new LocalDate(2026, 5, 1), 300) with { TimerSeconds = 3200 };
        var ride = On(new LocalDate(2026, 5, 5), 200);
        Assert.Null(new ThresholdBook(new Rider(), [patchy, ride]).PowerFor(ride));
    }

    [Fact]
    public void Rides_shorter_than_20_minutes_estimate_nothing_and_count_as_powered_rides()
    {
        var ride = On(new LocalDate(2026, 5, 5), 200);
        var brief = Ride(Flat(1199, 400), start: (ride.StartsAt - Duration.FromDays(2)).ToInstant(), file: "brief.fit");
        Assert.Null(new ThresholdBook(new Rider(), [brief, ride]).PowerFor(ride));
        var found = new ThresholdBook(new Rider(), [On(ride.Date.PlusDays(-3), 300), brief, ride]).PowerFor(ride)!;
        Assert.Equal(2, found.PoweredRidesBefore);
    }

    private static Ride On(LocalDate date, double watts) =>
        Ride(Flat(1500, watts), start: date.At(new LocalTime(12, 0)).InUtc().ToInstant(), file: date.ToString("R", null));
}
