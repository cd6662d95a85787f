using RideAudit.Fit.Messages;
using RideAudit.Fit.Protocol;
using Base = RideAudit.Fit.Protocol.FitBaseType;

namespace RideAudit.Fit.Writing;

/// <summary>Collects the fields of one message that have a value.</summary>
internal sealed class FieldList
{
    private readonly List<FitFieldLayout> _layout = [];
    private readonly List<FitValue> _values = [];

    /// <summary>The raw number of a scaled value.</summary>
    public static FitValue Scaled(double? value, double scale) => (long?)(value is { } v ? (long)Math.Round(v * scale) : null);

    public FieldList Add(byte number, FitBaseType type, long? value)
    {
        if (value is { } v)
            AddField(new FitFieldLayout(number, type), (long?)v);
        return this;
    }

    public FieldList AddScaled(byte number, FitBaseType type, double? value, double scale) =>
        Add(number, type, value is { } v ? (long)Math.Round(v * scale) : null);

    public FieldList AddText(byte number, string text) =>
        AddBytes(number, Base.String, [.. System.Text.Encoding.UTF8.GetBytes(text), 0]);

    public FieldList AddBytes(byte number, FitBaseType type, byte[] bytes)
    {
        AddField(new FitFieldLayout(number, type, (byte)Math.Min(byte.MaxValue, bytes.Length)), bytes);
        return this;
    }

    public FieldList AddLap(FitLap lap) => this
        .Add(FitConstants.TimestampField, Base.UInt32, lap.Timestamp)
        .Add(2, Base.UInt32, lap.StartTime)
        .AddScaled(7, Base.UInt32, lap.TotalElapsedSeconds, 1000)
        .AddScaled(8, Base.UInt32, lap.TotalTimerSeconds, 1000)
        .AddScaled(9, Base.UInt32, lap.TotalDistanceM, 100)
        .Add(FitConstants.MessageIndexField, Base.UInt16, lap.MessageIndex)
        .Add(19, Base.UInt16, lap.AvgPower)
        .Add(20, Base.UInt16, lap.MaxPower)
        .Add(33, Base.UInt16, lap.NormalisedPower)
        .Add(15, Base.UInt8, lap.AvgHeartRate)
        .Add(24, Base.Enum, lap.Trigger);

    public FieldList AddSession(FitSession s) => this
        .Add(FitConstants.TimestampField, Base.UInt32, s.Timestamp)
        .Add(2, Base.UInt32, s.StartTime)
        .AddScaled(7, Base.UInt32, s.TotalElapsedSeconds, 1000)
        .AddScaled(8, Base.UInt32, s.TotalTimerSeconds, 1000)
        .AddScaled(9, Base.UInt32, s.TotalDistanceM, 100)
        .AddScaled(48, Base.UInt32, s.TotalWorkJ, 1)
        .AddScaled(124, Base.UInt32, s.AvgSpeedMps, 1000)
        .Add(FitConstants.MessageIndexField, Base.UInt16, s.MessageIndex)
        .Add(25, Base.UInt16, s.FirstLapIndex)
        .Add(26, Base.UInt16, s.NumLaps)
        .Add(11, Base.UInt16, s.Calories)
        .Add(20, Base.UInt16, s.AvgPower)
        .Add(21, Base.UInt16, s.MaxPower)
        .Add(22, Base.UInt16, s.TotalAscentM)
        .Add(34, Base.UInt16, s.NormalisedPower)
        .AddScaled(35, Base.UInt16, s.TrainingStress, 10)
        .AddScaled(36, Base.UInt16, s.IntensityRatio, 1000)
        .Add(45, Base.UInt16, s.ThresholdPower)
        .Add(5, Base.Enum, s.Sport)
        .Add(6, Base.Enum, s.SubSport)
        .Add(16, Base.UInt8, s.AvgHeartRate)
        .Add(17, Base.UInt8, s.MaxHeartRate)
        .Add(18, Base.UInt8, s.AvgCadence)
        .Add(193, Base.UInt8, s.EffortRating);

    public FieldList AddUserProfile(FitUserProfile p) => this
        .AddScaled(4, Base.UInt16, p.WeightKg, 10)
        .Add(1, Base.Enum, p.Gender)
        .Add(2, Base.UInt8, p.AgeYears)
        .AddScaled(3, Base.UInt8, p.HeightM, 100)
        .Add(8, Base.UInt8, p.RestingHeartRate)
        .Add(10, Base.UInt8, p.MaxBikingHeartRate)
        .Add(11, Base.UInt8, p.MaxHeartRate);

    public FitFieldLayout[] Layout() => [.. _layout];

    public FitValue[] Values() => [.. _values];

    public void Clear()
    {
        _layout.Clear();
        _values.Clear();
    }

    private void AddField(FitFieldLayout field, FitValue value)
    {
        _layout.Add(field);
        _values.Add(value);
    }
}
