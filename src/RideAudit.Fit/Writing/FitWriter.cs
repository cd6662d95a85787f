using RideAudit.Fit.Messages;
using RideAudit.Fit.Protocol;
using Base = RideAudit.Fit.Protocol.FitBaseType;

namespace RideAudit.Fit.Writing;

/// <summary>Writes an activity or workout file message by message. Definitions are written when they are needed; absent values are left out of summaries.</summary>
/// <remarks>Not thread-safe. Order is the caller's: file_id first, times ascending, session and activity last is what most devices do.</remarks>
public sealed class FitWriter
{
    private const byte RecordType = 1;
    private const byte WorkoutStepType = 12;
    private const byte StepNameSize = 24;
    private readonly FitWriterOptions _options;
    private readonly FieldList _list = new();
    private readonly FitFieldLayout[]?[] _defined = new FitFieldLayout[]?[FitConstants.LocalTypes];
    private bool _hasDeveloperPower;
    private bool _recordsDefined;
    private bool _workoutStepsDefined;

    /// <summary>Starts a file.</summary>
    /// <param name="options">Settings; null for the usual ones.</param>
    public FitWriter(FitWriterOptions? options = null) => _options = options ?? new FitWriterOptions();

    /// <summary>The writer beneath, for messages that have no method here. Local types 13 to 15 are free.</summary>
    public FitMessageWriter Messages { get; } = new();

    /// <summary>Writes the file_id message.</summary>
    /// <param name="fileId">Its values.</param>
    public void WriteFileId(FitFileId fileId) => Write(0, GlobalMessage.FileId, _list
        .Add(0, Base.Enum, (long)fileId.Type)
        .Add(1, Base.UInt16, fileId.Manufacturer)
        .Add(2, Base.UInt16, fileId.Product)
        .Add(4, Base.UInt32, fileId.TimeCreated));

    /// <summary>Writes one record with the fields timestamp, power, heart rate, cadence, speed, altitude, distance and, if described before, developer power.</summary>
    /// <param name="record">Its values; null is written as missing.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value does not fit its field.</exception>
    public void WriteRecord(in FitRecord record)
    {
        DefineRecords();
        Messages.Write(
            RecordType,
            record.Timestamp,
            (long?)record.Power,
            (long?)record.HeartRate,
            (long?)record.Cadence,
            FieldList.Scaled(record.SpeedMps, 1000),
            FieldList.Scaled(record.AltitudeM + 500, 5),
            FieldList.Scaled(record.DistanceM, 100),
            (long?)record.DeveloperPower);
    }

    /// <summary>Writes an event.</summary>
    /// <param name="value">Its values; absent ones are left out.</param>
    public void WriteEvent(FitEvent value)
    {
        ArgumentNullException.ThrowIfNull(value);
        Write(2, GlobalMessage.Event, _list
            .Add(FitConstants.TimestampField, Base.UInt32, value.Timestamp)
            .Add(3, Base.UInt32, value.Data)
            .Add(0, Base.Enum, value.Event)
            .Add(1, Base.Enum, value.EventType)
            .Add(4, Base.UInt8, value.Group));
    }

    /// <summary>Writes a lap.</summary>
    /// <param name="lap">Its values; absent ones are left out.</param>
    public void WriteLap(FitLap lap)
    {
        ArgumentNullException.ThrowIfNull(lap);
        Write(3, GlobalMessage.Lap, _list.AddLap(lap));
    }

    /// <summary>Writes a session.</summary>
    /// <param name="session">Its values; absent ones are left out.</param>
    public void WriteSession(FitSession session)
    {
        ArgumentNullException.ThrowIfNull(session);
        Write(4, GlobalMessage.Session, _list.AddSession(session));
    }

    /// <summary>Writes the activity message.</summary>
    /// <param name="activity">Its values; absent ones are left out.</param>
    public void WriteActivity(FitActivity activity)
    {
        ArgumentNullException.ThrowIfNull(activity);
        Write(5, GlobalMessage.Activity, _list
            .Add(FitConstants.TimestampField, Base.UInt32, activity.Timestamp)
            .AddScaled(0, Base.UInt32, activity.TotalTimerSeconds, 1000)
            .Add(5, Base.UInt32, activity.LocalTimestamp)
            .Add(1, Base.UInt16, activity.NumSessions));
    }

    /// <summary>Writes a sport message.</summary>
    /// <param name="sport">Its values; absent ones are left out.</param>
    public void WriteSport(FitSport sport)
    {
        ArgumentNullException.ThrowIfNull(sport);
        Write(6, GlobalMessage.Sport, _list.Add(0, Base.Enum, sport.Sport).Add(1, Base.Enum, sport.SubSport));
    }

    /// <summary>Writes thresholds.</summary>
    /// <param name="target">Its values; absent ones are left out.</param>
    public void WriteZonesTarget(FitZonesTarget target)
    {
        ArgumentNullException.ThrowIfNull(target);
        Write(7, GlobalMessage.ZonesTarget, _list
            .Add(3, Base.UInt16, target.ThresholdPower)
            .Add(1, Base.UInt8, target.MaxHeartRate)
            .Add(2, Base.UInt8, target.ThresholdHeartRate));
    }

    /// <summary>Writes the rider's body data.</summary>
    /// <param name="profile">Its values; absent ones are left out.</param>
    public void WriteUserProfile(FitUserProfile profile)
    {
        ArgumentNullException.ThrowIfNull(profile);
        Write(8, GlobalMessage.UserProfile, _list.AddUserProfile(profile));
    }

    /// <summary>Describes developer field 0 of index 0 as power in watts; the records that follow carry it.</summary>
    /// <param name="name">Name of the field; "Power" is understood as the rider's power.</param>
    public void WriteDeveloperPower(string name = "Power")
    {
        Write(9, GlobalMessage.DeveloperDataId, _list.AddBytes(1, Base.Byte, new byte[16]).Add(3, Base.UInt8, 0));
        Write(10, GlobalMessage.FieldDescription, _list
            .Add(0, Base.UInt8, 0)
            .Add(1, Base.UInt8, 0)
            .Add(2, Base.UInt8, (long)Base.UInt16)
            .AddText(3, name)
            .AddText(8, "watts")
            .Add(14, Base.UInt16, GlobalMessage.Record)
            .Add(15, Base.UInt8, RecordField.Power));
        _hasDeveloperPower = true;
        _recordsDefined = false;
    }

    /// <summary>Writes what a workout file holds; its steps follow.</summary>
    /// <param name="workout">Its values; absent ones are left out.</param>
    public void WriteWorkout(FitWorkout workout)
    {
        ArgumentNullException.ThrowIfNull(workout);
        Write(11, GlobalMessage.Workout, _list
            .Add(4, Base.Enum, workout.Sport)
            .Add(6, Base.UInt16, workout.Steps)
            .AddText(8, workout.Name));
    }

    /// <summary>Writes one step of a workout. All steps share one definition, as devices expect it.</summary>
    /// <param name="step">Its values; absent ones are written as missing, a name is cut to its room.</param>
    public void WriteWorkoutStep(FitWorkoutStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        DefineWorkoutSteps();
        Messages.Write(
            WorkoutStepType,
            (long?)step.Index,
            (long?)step.DurationValue,
            (long?)step.TargetValue,
            (long?)step.TargetLow,
            (long?)step.TargetHigh,
            (long?)step.DurationType,
            (long?)step.TargetType,
            (long?)step.Intensity,
            StepName(step.Name));
    }

    /// <summary>The finished file.</summary>
    public byte[] Finish() => Messages.Finish(_options);

    // Text ends in a 0 inside its field; what is cut must not end within a letter of several bytes.
    private static string StepName(string name)
    {
        while (System.Text.Encoding.UTF8.GetByteCount(name) >= StepNameSize)
            name = name[..^(char.IsLowSurrogate(name[^1]) ? 2 : 1)];
        return name;
    }

    private void DefineWorkoutSteps()
    {
        if (_workoutStepsDefined)
            return;
        _workoutStepsDefined = true;
        Messages.Define(
            WorkoutStepType,
            GlobalMessage.WorkoutStep,
            [
                new(FitConstants.MessageIndexField, Base.UInt16), new(2, Base.UInt32), new(4, Base.UInt32), new(5, Base.UInt32), new(6, Base.UInt32),
                new(1, Base.Enum), new(3, Base.Enum), new(7, Base.Enum), new(0, Base.String, StepNameSize),
            ],
            _options.ByteOrder);
    }

    private void DefineRecords()
    {
        if (_recordsDefined)
            return;
        _recordsDefined = true;
        ReadOnlySpan<FitDeveloperFieldLayout> developer = _hasDeveloperPower ? [new(0, 0, Base.UInt16, 2)] : [];
        Messages.Define(
            RecordType,
            GlobalMessage.Record,
            [
                new(FitConstants.TimestampField, Base.UInt32), new(RecordField.Power, Base.UInt16), new(RecordField.HeartRate, Base.UInt8), new(RecordField.Cadence, Base.UInt8),
                new(RecordField.EnhancedSpeed, Base.UInt32), new(RecordField.EnhancedAltitude, Base.UInt32), new(RecordField.Distance, Base.UInt32),
            ],
            _options.ByteOrder,
            developer);
    }

    private void Write(byte localType, ushort global, FieldList fields)
    {
        var layout = fields.Layout();
        if (_defined[localType] is not { } before || !before.AsSpan().SequenceEqual(layout))
            Messages.Define(localType, global, layout, _options.ByteOrder);
        _defined[localType] = layout;
        Messages.Write(localType, fields.Values());
        fields.Clear();
    }
}
