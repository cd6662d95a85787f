using FsCheck;
using FsCheck.Fluent;
using RideAudit.Fit.Messages;
using RideAudit.Fit.Writing;

namespace RideAudit.Fit.Tests.Writing;

public class FitWriterTests
{
    private const uint Start = 1_100_000_000;

    [Fact]
    public void Any_records_come_back_as_they_were_written() =>
        Check.One(Config.QuickThrowOnFailure.WithReplay(20_260_705UL, 3UL), Prop.ForAll(AnyRecords().ToArbitrary(), CameBack));

    [Theory]
    [InlineData(FitByteOrder.LittleEndian)]
    [InlineData(FitByteOrder.BigEndian)]
    public void Summaries_come_back_as_they_were_written(FitByteOrder order)
    {
        var session = SomeSession();
        FitUserProfile profile = new() { Gender = 0, AgeYears = 40, HeightM = 1.79, WeightKg = 71, RestingHeartRate = 50, MaxBikingHeartRate = 185, MaxHeartRate = 188 };
        FitLap lap = new() { Timestamp = Start + 60, StartTime = Start, TotalElapsedSeconds = 60, TotalTimerSeconds = 58.5, TotalDistanceM = 500.25, AvgHeartRate = 140, AvgPower = 210, MaxPower = 400, NormalisedPower = 220, Trigger = 7, MessageIndex = 0 };
        FitWriter writer = new(new FitWriterOptions { ByteOrder = order });
        writer.WriteFileId(new FitFileId(FitFileType.Activity, 255, 3, Start));
        writer.WriteUserProfile(profile);
        writer.WriteSport(new FitSport(2, 7));
        writer.WriteZonesTarget(new FitZonesTarget(250, 188, 168));
        writer.WriteEvent(new FitEvent(Start, FitEvent.Timer, 0));
        writer.WriteLap(lap);
        writer.WriteSession(session);
        writer.WriteActivity(new FitActivity(Start + 60, Start + 3660, 58.5, 1));

        var part = Assert.Single(FitDecoder.Decode(writer.Finish()).Parts);

        Assert.Equal(new FitFileId(FitFileType.Activity, 255, 3, Start), part.FileId);
        Assert.Equal(profile, part.UserProfile);
        Assert.Equal(new FitSport(2, 7), part.Sport);
        Assert.Equal(new FitZonesTarget(250, 188, 168), Assert.Single(part.ZonesTargets));
        Assert.Equal(new FitEvent(Start, FitEvent.Timer, 0), Assert.Single(part.Events) with { FileOrder = 0 });
        Assert.Equal(lap, Assert.Single(part.Laps) with { FileOrder = 0 });
        Assert.Equal(session, Assert.Single(part.Sessions) with { FileOrder = 0 });
        Assert.Equal(new FitActivity(Start + 60, Start + 3660, 58.5, 1), part.Activity! with { FileOrder = 0 });
        Assert.True(part.Integrity.IsIntact);
    }

    [Theory]
    [InlineData(FitByteOrder.LittleEndian)]
    [InlineData(FitByteOrder.BigEndian)]
    public void A_workout_comes_back_as_it_was_written(FitByteOrder order)
    {
        FitWorkoutStep easy = new() { Index = 0, Name = "easy", DurationType = FitWorkoutStep.Time, DurationValue = 900_000, TargetType = FitWorkoutStep.Power, TargetValue = 0, TargetLow = 1138, TargetHigh = 1163, Intensity = 2 };
        FitWorkoutStep repeat = new() { Index = 1, DurationType = FitWorkoutStep.RepeatUntilStepsComplete, DurationValue = 0, TargetType = FitWorkoutStep.Open, TargetValue = 3 };
        FitWriter writer = new(new FitWriterOptions { ByteOrder = order });
        writer.WriteFileId(new FitFileId(FitFileType.Workout, 255, 0, Start));
        writer.WriteWorkout(new FitWorkout("four fours", 2, 2));
        writer.WriteWorkoutStep(easy);
        writer.WriteWorkoutStep(repeat);

        var part = Assert.Single(FitDecoder.Decode(writer.Finish()).Parts);

        Assert.Equal(new FitWorkout("four fours", 2, 2), part.Workout);
        Assert.Equal([easy, repeat], part.WorkoutSteps);
        Assert.Empty(part.Faults);
        Assert.False(part.IsActivity);
    }

    [Fact]
    public void A_step_name_too_long_for_its_room_is_cut_between_two_letters()
    {
        FitWriter writer = new();
        writer.WriteWorkoutStep(new FitWorkoutStep { Name = "zwölf Sprünge über äußere Hügel" });

        Assert.Equal("zwölf Sprünge über ", FitDecoder.Decode(writer.Finish()).Parts[0].WorkoutSteps[0].Name);
    }

    [Fact]
    public void Developer_power_comes_back_beside_native_power()
    {
        FitWriter writer = new();
        writer.WriteDeveloperPower();
        writer.WriteRecord(new FitRecord(Start, Power: 200, DeveloperPower: 210));
        writer.WriteRecord(new FitRecord(Start + 1, DeveloperPower: 220));

        var records = FitDecoder.Decode(writer.Finish()).Parts[0].Records;

        Assert.Equal([210f, 220f], records.DeveloperPower.ToArray());
        Assert.Equal([200f, 220f], new[] { records.PowerOrDeveloperPower(0), records.PowerOrDeveloperPower(1) });
    }

    [Fact]
    public void A_value_that_does_not_fit_its_field_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new FitWriter().WriteRecord(new FitRecord(Start, HeartRate: 300)));

    [Fact]
    public void Data_before_their_definition_are_refused() =>
        Assert.Throws<InvalidOperationException>(() => new FitMessageWriter().Write(3, 1));

    [Fact]
    public void A_compressed_time_needs_one_of_the_first_four_local_types()
    {
        FitMessageWriter writer = new();
        writer.Define(4, 20, []);
        Assert.Throws<ArgumentOutOfRangeException>(() => writer.WriteCompressed(4, 0));
    }

    private static FitSession SomeSession() => new()
    {
        Timestamp = Start + 60,
        StartTime = Start,
        Sport = 2,
        SubSport = 7,
        TotalElapsedSeconds = 60.123,
        TotalTimerSeconds = 58.5,
        TotalDistanceM = 500.25,
        Calories = 12,
        AvgSpeedMps = 8.333,
        AvgHeartRate = 140,
        MaxHeartRate = 150,
        AvgCadence = 88,
        AvgPower = 210,
        MaxPower = 400,
        TotalAscentM = 5,
        NormalisedPower = 220,
        TrainingStress = 1.4,
        IntensityRatio = 0.88,
        ThresholdPower = 250,
        TotalWorkJ = 12_600,
        EffortRating = 40,
        MessageIndex = 0,
        FirstLapIndex = 0,
        NumLaps = 1,
    };

    private static Gen<FitRecord[]> AnyRecords()
    {
        Gen<int?> Maybe(int high) => Gen.Frequency((4, Gen.Choose(0, high).Select(v => (int?)v)), (1, Gen.Constant((int?)null)));
        var record =
            from time in Gen.Choose(0, 80_000)
            from power in Maybe(65_534)
            from heartRate in Maybe(253)
            from cadence in Maybe(254)
            from speed in Maybe(30_000)
            from altitude in Maybe(20_000)
            from distance in Maybe(int.MaxValue)
            select new FitRecord(Start + (uint)time, power, heartRate + 1, cadence, speed / 1000.0, (altitude / 5.0) - 500, distance / 100.0);
        return record.ArrayOf();
    }

    private static bool CameBack(FitRecord[] written)
    {
        foreach (var order in Enum.GetValues<FitByteOrder>())
        {
            FitWriter writer = new(new FitWriterOptions { ByteOrder = order });
            writer.WriteFileId(new FitFileId(FitFileType.Activity));
            foreach (var record in written)
                writer.WriteRecord(record);
            var file = FitDecoder.Decode(writer.Finish());
            if (file.Parts[0].Records.Count != written.Length || !written.Select((r, i) => IsRow(file.Parts[0].Records, i, r)).All(same => same))
                return false;
        }

        return true;
    }

    private static bool IsRow(RecordChannels read, int i, FitRecord written) =>
        read.Timestamps[i] == written.Timestamp
        && Same(read.Power[i], written.Power)
        && Same(read.HeartRate[i], written.HeartRate)
        && Same(read.Cadence[i], written.Cadence)
        && Same(read.SpeedMps[i], written.SpeedMps)
        && Same(read.AltitudeM[i], written.AltitudeM)
        && (written.DistanceM is { } metres ? Math.Abs(read.DistanceM[i] - metres) < 1e-9 * (1 + metres) : double.IsNaN(read.DistanceM[i]));

    private static bool Same(float read, double? written) => written is { } value ? read == (float)value : float.IsNaN(read);
}
