using System.Buffers.Binary;
using RideAudit.Fit.Messages;
using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>Reads record messages into the columns, without an allocation a record.</summary>
internal sealed class RecordReader(RecordColumns columns)
{
    private const double HighestPower = 0xFFFE;
    private WrappingCounter distance = new(12);
    private WrappingCounter accumulatedPower = new(16);

    /// <summary>Reads one record into the next row.</summary>
    /// <param name="plan">The plan of its definition.</param>
    /// <param name="message">Its bytes without the header byte.</param>
    /// <param name="bigEndian">Byte order of its definition.</param>
    /// <param name="time">Its time, resolved; <see cref="RecordChannels.NoTime"/> if unknown.</param>
    public void Read(RecordPlan plan, ReadOnlySpan<byte> message, bool bigEndian, uint time)
    {
        int row = columns.Count;
        columns.TimeArray[row] = time;
        foreach (ref readonly RecordSlot slot in plan.Slots.AsSpan())
        {
            uint raw;
            ReadOnlySpan<byte> at = message[slot.Offset..];
            switch (slot.Kind)
            {
                case SlotKind.Byte: raw = at[0]; break;
                case SlotKind.Word: raw = BinaryPrimitives.ReadUInt16LittleEndian(at); break;
                case SlotKind.Long: raw = BinaryPrimitives.ReadUInt32LittleEndian(at); break;
                case SlotKind.BigWord: raw = BinaryPrimitives.ReadUInt16BigEndian(at); break;
                case SlotKind.BigLong: raw = BinaryPrimitives.ReadUInt32BigEndian(at); break;
                default: ReadUnusual(in slot, at, bigEndian, row); continue;
            }

            if (raw - slot.Lowest < slot.ValidCount)
                Store(in slot, row, raw);
        }

        if (plan.DeveloperPower is { } developer)
            ReadDeveloperPower(developer, message, bigEndian, row);
        columns.Commit();
    }

    private void Store(in RecordSlot slot, int row, double raw)
    {
        double value = slot.IsScaled ? (raw / slot.Scale) - slot.Subtract : raw;
        if (slot.Column < RecordColumn.Distance)
            columns.Single(slot.Column)[row] = (float)value;
        else if (slot.Column == RecordColumn.Distance)
            columns.DistanceArray[row] = value;
        else
            StoreSpecial(slot.Column, row, value);
    }

    private void StoreSpecial(RecordColumn column, int row, double value)
    {
        switch (column)
        {
            case RecordColumn.CadenceFraction: columns.Single(RecordColumn.Cadence)[row] += (float)value; break;
            case RecordColumn.AccumulatedPower: columns.AccumulatedPowers()[row] = value; break;
            case RecordColumn.CompressedAccumulatedPower: columns.AccumulatedPowers()[row] = accumulatedPower.Advance((uint)value); break;
            case RecordColumn.Balance: columns.Balances()[row] = (byte)value; break;
        }
    }

    private void ReadUnusual(in RecordSlot slot, ReadOnlySpan<byte> at, bool bigEndian, int row)
    {
        if (slot.Kind == SlotKind.CompressedSpeedDistance)
            ReadCompressedSpeedDistance(at, row);
        else if (FieldReader.TryReadNumber(at, slot.Type, bigEndian, out double raw) && raw >= slot.Lowest && raw <= HighestOf(slot))
            Store(in slot, row, raw);
    }

    private static double HighestOf(in RecordSlot slot) => slot.Lowest + (double)slot.ValidCount - 1;

    private void ReadCompressedSpeedDistance(ReadOnlySpan<byte> at, int row)
    {
        if (at[0] == byte.MaxValue && at[1] == byte.MaxValue && at[2] == byte.MaxValue)
            return;
        columns.Single(RecordColumn.Speed)[row] = (float)((at[0] | ((at[1] & 0x0F) << 8)) / 100.0);
        columns.DistanceArray[row] = distance.Advance((uint)((at[1] >> 4) | (at[2] << 4))) / 16.0;
    }

    private void ReadDeveloperPower(DeveloperPowerSlot slot, ReadOnlySpan<byte> message, bool bigEndian, int row)
    {
        if (!FieldReader.TryReadNumber(message[slot.Offset..], slot.Type, bigEndian, out double raw))
            return;
        double watts = (raw / slot.Scale) - slot.Subtract;
        if (watts is >= 0 and <= HighestPower)
            columns.DeveloperPowers()[row] = (float)watts;
    }
}
