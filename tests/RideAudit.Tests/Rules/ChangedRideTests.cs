using NodaTime;
using RideAudit.Plan;
using RideAudit.Rules.Changes;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

/// <summary>A ride as it would have been, figure by figure.</summary>
public sealed class ChangedRideTests
{
    private static readonly LocalDate Monday = Sample.Monday;

    [Fact]
    public void A_moved_ride_keeps_its_clock_time()
    {
        var ride = Sample.Ride(Monday, RideKind.High, 60, 23, 30);

        var moved = ChangedRide.On(ride, Monday.PlusDays(3));

        Assert.Equal((Monday.PlusDays(3), new LocalTime(23, 30)), (moved.Date, moved.StartsAt.TimeOfDay));
    }

    [Fact]
    public void An_eased_ride_is_the_same_time_at_a_ratio_of_65_percent_and_all_low()
    {
        var eased = ChangedRide.Eased(Sample.Ride(Monday, RideKind.High, 90), new Limits());

        Assert.Equal(1.5 * 0.65 * 0.65 * 100, eased.Stress!.Value, 9);
        Assert.Equal((5400.0, 1.0, RideKind.Endurance), (eased.DurationSeconds, eased.Bands.LowShare, eased.Kind));
        Assert.Equal(0.65 * 250, eased.NormalisedPower!.Value.Value, 9);
    }

    [Fact]
    public void A_lengthened_ride_reaches_the_long_ride_length_at_its_own_stress_an_hour()
    {
        var ride = Sample.Ride(Monday, RideKind.Endurance, 100);

        var longer = ChangedRide.Lengthened(ride, new Limits { LongRideHours = 2.5 });

        Assert.Equal((9000.0, RideKind.Long), (longer.DurationSeconds, longer.Kind));
        Assert.Equal(ride.Stress!.Value * 1.5, longer.Stress!.Value, 9);
        Assert.Equal(ride.Bands.AboveLow, longer.Bands.AboveLow, 9);
    }

    [Fact]
    public void A_ride_without_power_or_stress_gets_none_by_being_eased()
    {
        var pulse = Sample.Ride(Monday, RideKind.Threshold, 60) with { Threshold = null, NormalisedPower = null, IntensityRatio = null, Stress = null };

        var eased = ChangedRide.Eased(pulse, new Limits());

        Assert.Equal((null, null, null), (eased.IntensityRatio, eased.NormalisedPower?.Value, eased.Stress));
        Assert.Equal((RideKind.Endurance, new BandSeconds(3600, 0, 0)), (eased.Kind, eased.Bands));
    }

    [Fact]
    public void Stress_that_is_known_is_that_of_riding_easy_though_the_power_is_not()
    {
        var eased = ChangedRide.Eased(Sample.Ride(Monday, RideKind.High, 60) with { NormalisedPower = null }, new Limits());

        Assert.Equal((0.65, null), (eased.IntensityRatio, eased.NormalisedPower?.Value));
        Assert.Equal(42.25, eased.Stress!.Value, 9);
    }

    [Theory]
    [InlineData(75, RideKind.Recovery)]
    [InlineData(76, RideKind.Endurance)]
    [InlineData(142, RideKind.Endurance)]
    [InlineData(143, RideKind.Long)]
    public void An_eased_ride_is_of_the_kind_that_its_length_makes_it(int minutes, RideKind kind)
    {
        var eased = ChangedRide.Eased(Sample.Ride(Monday, RideKind.High, minutes), new Limits { EasedRatio = 0.6 });

        Assert.Equal((kind, kind == RideKind.Long), (eased.Kind, eased.LongEnough));
    }

    [Fact]
    public void Nothing_hard_is_left_in_an_eased_ride()
    {
        var hard = Sample.Ride(Monday, RideKind.High, 60) with { BoutCount = 5, BoutSeconds = 1200 };

        var eased = ChangedRide.Eased(hard, new Limits());

        Assert.Equal((0, 0, null, null, null), (eased.BoutCount, eased.BoutSeconds, eased.AtThresholdShare, eased.AtHighShare, eased.NearThreshold));
    }

    [Fact]
    public void A_lengthened_ride_has_the_work_and_the_clock_time_of_its_length()
    {
        var ride = Sample.Ride(Monday, RideKind.Endurance, 100) with { ElapsedSeconds = 6600, WorkKj = 900 };

        var longer = ChangedRide.Lengthened(ride, new Limits());

        Assert.Equal((9000.0, 9600.0), (longer.DurationSeconds, longer.ElapsedSeconds));
        Assert.Equal(1350, longer.WorkKj!.Value, 9);
    }

    [Theory]
    [InlineData(3030, RideKind.Long)]
    [InlineData(3029, RideKind.Endurance)]
    public void A_lengthened_ride_is_long_from_its_share_of_easy_riding_on(int low, RideKind kind)
    {
        var ride = Sample.Ride(Monday, RideKind.Endurance, 100) with { Bands = new BandSeconds(low, 6000 - low, 0) };
        var limits = new Limits { LongRideLowShare = 6030.0 / 9000 };

        Assert.Equal(kind, ChangedRide.Lengthened(ride, limits).Kind);
    }

    [Theory]
    [InlineData(100, 150, 160)]
    [InlineData(200, 200, 210)]
    public void A_hard_ride_ridden_long_is_at_least_the_long_ride_and_never_shorter(int minutes, int becomes, int onTheClock)
    {
        var hard = Sample.Ride(Monday, RideKind.High, minutes) with { ElapsedSeconds = 60 * (minutes + 10) };

        var ridden = ChangedRide.AsLongRide(hard, new Limits());

        Assert.Equal((60.0 * becomes, 60.0 * onTheClock, RideKind.Long), (ridden.DurationSeconds, ridden.ElapsedSeconds, ridden.Kind));
        Assert.Equal(becomes / 60.0 * 42.25, ridden.Stress!.Value, 9);
    }
}
