using NodaTime;
using RideAudit.Fit;
using RideAudit.Fit.Messages;
using RideAudit.Fit.Protocol;
using RideAudit.Plan;
using RideAudit.Rides;

namespace RideAudit.Tests.Ingest;

public sealed class FitRecordingTests
{
    private static Recording Single(FitSketch sketch, Rider? rider = null, string name = "ride.fit") =>
        Assert.Single(Reading.Of(name, sketch.Bytes(), rider).Recordings);

    [Theory]
    [InlineData(true, 3600, OffsetSource.RiderZone)]
    [InlineData(false, -14_400, OffsetSource.File)]
    public void The_devices_setting_counts_only_where_the_rider_file_names_no_zone(bool hasZone, int expected, OffsetSource from)
    {
        // device_settings is message 2, its field 2 the offset of local time, stored unsigned: 4294952896 is -14400 s.
        var sketch = new FitSketch
        {
            OffsetSeconds = null,
            Before = writer =>
            {
                writer.Messages.Define(12, 2, [new(2, FitBaseType.UInt32)]);
                writer.Messages.Write(12, 4_294_952_896u);
            },
        };
        var recording = Assert.Single(Reading.Of("ride.fit", sketch.Bytes(), hasZone ? Reading.Rider : new Rider()).Recordings);
        Assert.Equal((Offset.FromSeconds(expected), from), (recording.Offset, recording.OffsetFrom));
    }

    [Theory]
    [InlineData(3600, 3600, OffsetSource.File)]
    [InlineData(-18_000, -18_000, OffsetSource.File)]
    [InlineData(20_700, 20_700, OffsetSource.File)]
    [InlineData(0, 3600, OffsetSource.RiderZone)]
    [InlineData(3601, 3600, OffsetSource.RiderZone)]
    [InlineData(-46_800, 3600, OffsetSource.RiderZone)]
    [InlineData(54_000, 3600, OffsetSource.RiderZone)]
    [InlineData(null, 3600, OffsetSource.RiderZone)]
    public void The_files_own_offset_counts_where_it_can_be_one(int? stored, int expected, OffsetSource from)
    {
        var recording = Single(new FitSketch { OffsetSeconds = stored });
        Assert.Equal(Offset.FromSeconds(expected), recording.Offset);
        Assert.Equal(from, recording.OffsetFrom);
    }

    [Fact]
    public void An_offset_of_0_is_believed_where_the_riders_zone_has_0_as_well()
    {
        var recording = Single(new FitSketch { OffsetSeconds = 0 }, new Rider { TimeZone = DateTimeZone.Utc });
        Assert.Equal(OffsetSource.File, recording.OffsetFrom);
    }

    [Fact]
    public void Without_a_zone_in_the_rider_file_the_machines_is_used_and_said()
    {
        var read = Reading.Of("ride.fit", new FitSketch { OffsetSeconds = null }.Bytes(), new Rider());
        Assert.Equal(OffsetSource.MachineZone, Assert.Single(read.Recordings).OffsetFrom);
        Assert.True(read.TimeZoneIsTheMachines);
    }

    [Fact]
    public void A_ride_at_Sunday_2330_local_stays_on_Sunday()
    {
        var sunday = FitTime.FromUnixSeconds(Instant.FromUtc(2026, 5, 10, 22, 30).ToUnixTimeSeconds());
        Assert.Equal(new LocalDate(2026, 5, 10), Single(new FitSketch { Start = sunday, Seconds = 3600 }).StartsAt.Date);
    }

    [Fact]
    public void A_clock_that_was_never_set_takes_its_date_from_the_name()
    {
        var unset = new FitSketch { Start = 5000, OffsetSeconds = null };
        var read = Reading.Of("2026-05-05-1800.fit", unset.Bytes());
        Assert.Equal(1_778_000_400, Assert.Single(read.Recordings).Start.ToUnixTimeSeconds());
        Assert.Equal("The device’s clock was never set: the date comes from the file’s name.", Assert.Single(read.Notices).Sentence);
    }

    [Fact]
    public void A_clock_that_was_never_set_without_a_date_in_the_name_is_named_with_what_to_do()
    {
        var read = Reading.Of("ride.fit", new FitSketch { Start = 5000 }.Bytes());
        Assert.Empty(read.Recordings);
        Assert.True(Assert.Single(read.Notices).Unusable);
        Assert.Contains("put the date into the file’s name", read.Notices[0].Sentence);
    }

    [Fact]
    public void A_session_without_records_on_a_clock_never_set_is_not_put_into_1989()
    {
        var read = Reading.Of("ride.fit", new FitSketch { Start = 5000, TimeOf = _ => null, Timer = [] }.Bytes());
        Assert.Empty(read.Recordings);
        Assert.Equal("clock not set", Assert.Single(read.Notices).Problem);
    }

    [Fact]
    public void Two_parts_on_one_unset_clock_keep_their_distance()
    {
        byte[] both = [.. new FitSketch { Start = 5000, OffsetSeconds = null }.Bytes(), .. new FitSketch { Start = 12_200, OffsetSeconds = null }.Bytes()];
        var read = Reading.Of("2026-05-05.fit", both);
        Assert.Equal(2, read.Recordings.Length);
        Assert.Equal(Duration.FromHours(2), read.Recordings[1].Start - read.Recordings[0].Start);
    }

    [Fact]
    public void A_clock_that_was_three_days_behind_until_it_was_set_costs_no_second_and_no_day()
    {
        var recording = Single(new FitSketch
        {
            TimeOf = i => i < 40 ? FitSketch.Evening + (uint)i - 3 * 86_400 : FitSketch.Evening + (uint)i,
            Timer = [(-3 * 86_400, 0), (120, 4)],
        });
        Assert.Equal((120, 120.0, new LocalDate(2026, 5, 5)), (recording.Grid.Length, recording.ElapsedSeconds, recording.StartsAt.Date));
        Assert.Contains(recording.Remarks, r => r.StartsWith("The clock was set during the ride", StringComparison.Ordinal));
    }

    [Fact]
    public void A_ride_stopped_on_Tuesday_and_gone_on_with_on_Friday_is_paused_and_its_clock_left_alone()
    {
        var recording = Single(new FitSketch
        {
            TimeOf = i => i < 40 ? FitSketch.Evening + (uint)i : FitSketch.Evening + (uint)i + 3 * 86_400,
            Timer = [(0, 0), (40, 4), (3 * 86_400 + 40, 0), (3 * 86_400 + 120, 4)],
            Session = s => s with { TotalElapsedSeconds = 3 * 86_400 + 120 },
        });
        Assert.Equal((120, 3 * 86_400 + 120.0), (recording.Grid.Length, recording.ElapsedSeconds));
        Assert.DoesNotContain(recording.Remarks, r => r.StartsWith("The clock", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_distance_of_a_later_session_counts_from_its_own_start(bool deviceBeginsAgain)
    {
        // A triathlon in small: 100 s of swimming, 120 s of riding at 10 m/s, 80 s of running.
        double Whole(int i) => i < 100 ? i : i < 220 ? 100 + 10 * (i - 100) : 1300 + 3 * (i - 220);
        var read = Reading.Of("race.fit", new FitSketch
        {
            Seconds = 300,
            Sessions = [(5, 0, 100), (2, 100, 120), (1, 220, 80)],
            Distance = i => deviceBeginsAgain ? Whole(i) - (i < 100 ? 0 : i < 220 ? 100 : 1300) : Whole(i),
        }.Bytes());
        var ride = Assert.Single(read.Recordings, r => r.Sport != RideSport.Other);
        Assert.Equal(deviceBeginsAgain ? 1190 : 1191, ride.Grid.DistanceM!.Value, 1);
    }

    [Theory]
    [InlineData(6, RideSport.Indoor)]
    [InlineData(7, RideSport.Road)]
    [InlineData(8, RideSport.Mountain)]
    [InlineData(46, RideSport.Gravel)]
    [InlineData(58, RideSport.Virtual)]
    [InlineData(28, RideSport.EBike)]
    [InlineData(200, RideSport.Cycling)]
    public void Kinds_of_cycling_are_told_apart(byte subSport, RideSport expected) =>
        Assert.Equal(expected, Single(new FitSketch { SubSport = subSport }).Sport);

    [Fact]
    public void An_e_bike_keeps_its_time_and_heart_rate_and_says_why_it_has_no_power()
    {
        var recording = Single(new FitSketch { SubSport = 28 });
        Assert.Equal(120, SampleGrid.CountValues(recording.Grid.HeartRateBpm));
        Assert.Contains(recording.Remarks, r => r.StartsWith("E-bike", StringComparison.Ordinal));
    }

    [Fact]
    public void Heart_rate_0_throughout_is_no_sensor() =>
        Assert.Null(Single(new FitSketch { HeartRate = _ => 0 }).Grid.HeartRateBpm);

    [Theory]
    [InlineData(250, 250)]
    [InlineData(3, null)]
    [InlineData(1500, null)]
    public void A_stored_threshold_counts_where_it_can_be_one(int stored, int? expected) =>
        Assert.Equal(expected, (int?)Single(new FitSketch { Session = s => s with { ThresholdPower = stored } }).StoredThreshold?.Value);

    [Fact]
    public void A_threshold_in_the_zones_target_stands_in_for_the_sessions() =>
        Assert.Equal(260, Single(new FitSketch { Before = w => w.WriteZonesTarget(new FitZonesTarget(260)) }).StoredThreshold?.Value);

    [Fact]
    public void The_riders_own_rating_is_read_on_its_scale_of_ten() =>
        Assert.Equal(7, Single(new FitSketch { Session = s => s with { EffortRating = 70 } }).StoredRating);

    [Fact]
    public void Heart_rate_in_a_part_of_its_own_belongs_to_the_ride_before_it()
    {
        var bytes = File.ReadAllBytes(Repository.Path("testdata", "fit", "good", "A19-heart-rate-part.fit"));
        var recording = Assert.Single(Reading.Of("ride.fit", bytes).Recordings);
        Assert.True(SampleGrid.CountValues(recording.Grid.HeartRateBpm) >= 10);
    }

    [Fact]
    public void A_truncated_ride_keeps_its_whole_records_and_says_how_many()
    {
        var bytes = new FitSketch { Seconds = 600 }.Bytes();
        var read = Reading.Of("ride.fit", bytes[..(bytes.Length / 2)]);
        var notice = Assert.Single(read.Notices);
        Assert.Equal("truncated", notice.Problem);
        Assert.False(notice.Unusable);
        Assert.Matches(@"^\d+ of an unknown number of records$", notice.Kept);
        Assert.InRange(Assert.Single(read.Recordings).TimerSeconds, 250, 330);
    }
}
