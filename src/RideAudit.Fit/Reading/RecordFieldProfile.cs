using RideAudit.Fit.Messages;
using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>What the profile says of the record fields that are kept. Where two fields feed one channel the higher rank wins.</summary>
internal readonly record struct RecordFieldProfile(RecordColumn Column, int Rank, double Scale, double Subtract, uint Lowest, uint Highest)
{
    private const uint HighestByte = 0xFE;
    private const uint HighestWord = 0xFFFE;
    private const uint HighestLong = 0xFFFF_FFFE;

    public static bool TryFind(byte field, out RecordFieldProfile profile)
    {
        profile = field switch
        {
            RecordField.CompressedSpeedDistance => new(RecordColumn.CompressedSpeedDistance, 0, 1, 0, 0, 0),
            RecordField.Speed => new(RecordColumn.Speed, 1, 1000, 0, 0, HighestWord),
            RecordField.EnhancedSpeed => new(RecordColumn.Speed, 2, 1000, 0, 0, HighestLong),
            RecordField.Altitude => new(RecordColumn.Altitude, 1, 5, 500, 0, HighestWord),
            RecordField.EnhancedAltitude => new(RecordColumn.Altitude, 2, 5, 500, 0, HighestLong),
            RecordField.Distance => new(RecordColumn.Distance, 1, 100, 0, 0, HighestLong),
            RecordField.Power => new(RecordColumn.Power, 1, 1, 0, 0, HighestWord),
            RecordField.HeartRate => new(RecordColumn.HeartRate, 1, 1, 0, 1, HighestByte),
            RecordField.Cadence => new(RecordColumn.Cadence, 1, 1, 0, 0, HighestByte),
            RecordField.FractionalCadence => new(RecordColumn.CadenceFraction, 3, 128, 0, 0, HighestByte),
            RecordField.CompressedAccumulatedPower => new(RecordColumn.CompressedAccumulatedPower, 0, 1, 0, 0, HighestWord),
            RecordField.AccumulatedPower => new(RecordColumn.AccumulatedPower, 1, 1, 0, 0, HighestLong),
            RecordField.LeftRightBalance => new(RecordColumn.Balance, 1, 1, 0, 0, HighestByte),
            _ => new(RecordColumn.Balance, -1, 1, 0, 0, 0),
        };
        return profile.Rank >= 0;
    }
}
