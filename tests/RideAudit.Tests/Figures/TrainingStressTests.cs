using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rides;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>Hours × ratio² × 100: Allen and Coggan, chapter 7 (from memory). Values derived, exact.</summary>
public sealed class TrainingStressTests
{
    [Theory]
    [InlineData(3600, 200, 64.0)]
    [InlineData(3600, 250, 100.0)]
    [InlineData(1800, 250, 50.0)]
    [InlineData(7200, 125, 50.0)]
    public void Even_rides_at_threshold_250_have_the_stress_worked_out_by_hand(int seconds, double watts, double expected) =>
        Assert.Equal(expected, FiguresOf(Ride(Flat(seconds, watts))).Stress!.Value, 9);

    [Fact]
    public void A_pause_counts_neither_in_normalised_power_nor_in_time()
    {
        // 600 s at 200 W, 600 s stopped, 600 s at 200 W, T = 250: 1200/3600 × 0.64 × 100 (derived). Zero-filled 25.8202, elapsed 32.0.
        var track = new Track
        {
            Seconds = [.. Enumerable.Range(0, 600), .. Enumerable.Range(1200, 600)],
            PowerW = Flat(1200, 200),
        };
        var ride = RideJoiner.Join([Recorded(track)])[0];
        var figures = FiguresOf(ride);
        Assert.Equal(1200, figures.DurationSeconds);
        Assert.Equal(1800, figures.ElapsedSeconds);
        Assert.Equal(200, figures.NormalisedPower!.Value.Value, 9);
        Assert.Equal(21.3333, figures.Stress!.Value, 1e-4);
    }

    [Fact]
    public void Power_comes_before_heart_rate_and_heart_rate_before_a_rating()
    {
        var rider = Rider(heartRate: 168);
        var both = Ride(Flat(3600, 200), Flat(3600, 168)) with { Rating = 5 };
        Assert.Equal(StressSource.Power, FiguresOf(both, rider).StressFrom);
        var heart = Ride(null, Flat(3600, 168)) with { Rating = 5 };
        Assert.Equal((StressSource.HeartRate, 100.0), (FiguresOf(heart, rider).StressFrom, Math.Round(FiguresOf(heart, rider).Stress!.Value, 9)));
        var rated = Ride(null, Flat(3600, 168)) with { Rating = 7 };
        Assert.Equal((StressSource.Rating, 100.0), (FiguresOf(rated, new Rider()).StressFrom, Math.Round(FiguresOf(rated, new Rider()).Stress!.Value, 9)));
        Assert.Equal((StressSource.Unknown, null), (FiguresOf(heart with { Rating = null }, new Rider()).StressFrom, FiguresOf(heart with { Rating = null }, new Rider()).Stress));
    }

    [Fact]
    public void A_session_rated_5_for_an_hour_is_300_rating_minutes_and_that_share_of_an_hour_at_7()
    {
        // Foster et al. 2001, J Strength Cond Res 15:109–115 (found): rating × minutes; 5 × 60 = 300 (derived). One hour at 7 is 420.
        Assert.Equal(300 / 420.0 * 100, RatedLoad.Of(5, 60), 9);
        Assert.Equal(100, RatedLoad.Of(7, 60), 9);
        Assert.Equal(0, RatedLoad.Of(0, 60));
    }

    [Fact]
    public void Work_is_mean_power_times_powered_time()
    {
        // 200 W × 3600 s = 720 kJ (physics).
        Assert.Equal(720, FiguresOf(Ride(Flat(3600, 200))).WorkKj!.Value, 9);
    }

    private static Recording Recorded(Track track)
    {
        var gridded = GridBuilder.Build(track);
        return Recording("a.csv", NodaTime.Instant.FromUnixTimeSeconds(gridded.StartSecond), seconds: gridded.Grid.Length) with
        {
            Grid = gridded.Grid,
            TimerSeconds = gridded.TimerSeconds,
            ElapsedSeconds = gridded.ElapsedSeconds,
        };
    }
}
