using RideAudit.Fit.Messages;
using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>Reads record messages into the columns: a block at a time, channel after channel, without an allocation a record.</summary>
internal sealed class RecordReader(RecordColumns columns)
{
    private const double HighestPower = 0xFFFE;
    private WrappingCounter _distance = new(12);
    private WrappingCounter _accumulatedPower = new(16);

    /// <summary>Reads a block into the next rows, for which there must be room.</summary>
    /// <param name="plan">Which fields are kept, and how they are read.</param>
    /// <param name="block">Messages of one definition, one behind the other.</param>
    /// <param name="bigEndian">True where the definition says so; it holds for every field.</param>
    /// <param name="times">One a message, FIT seconds; the largest number stands for none.</param>
    public void Read(RecordPlan plan, in RecordBlock block, bool bigEndian, ReadOnlySpan<uint> times)
    {
        times.CopyTo(columns.TimeArray.AsSpan(columns.Count));
        Span<uint> raw = stackalloc uint[RecordBlock.MaxCount];
        raw = raw[..block.Count];
        foreach (ref readonly var slot in plan.Slots.AsSpan())
        {
            if (slot.Kind >= RecordSlot.SlotKind.General)
            {
                ReadUnusual(in slot, in block, bigEndian);
                continue;
            }

            RawGather.Gather(slot.Kind, in block, slot.Offset, raw);
            Store(in slot, raw);
        }

        if (plan.DeveloperPower is { } developer)
            ReadDeveloperPower(developer, in block, bigEndian);
        columns.Commit(block.Count);
    }

    private void Store(in RecordSlot slot, ReadOnlySpan<uint> raw)
    {
        if (slot.Column < RecordColumn.Distance)
            StoreSingles(in slot, raw, columns.NextRows(slot.Column, raw.Length));
        else if (slot.Column == RecordColumn.Distance)
            StoreDistances(in slot, raw, columns.DistanceArray.AsSpan(columns.Count, raw.Length));
        else
            StoreSpecials(in slot, raw);
    }

    private static void StoreSingles(in RecordSlot slot, ReadOnlySpan<uint> raw, Span<float> rows)
    {
        (var lowest, var valid) = (slot.Lowest, slot.ValidCount);
        (var scale, var subtract) = (slot.Scale, slot.Subtract);
        if (!slot.IsScaled)
        {
            for (var i = 0; i < raw.Length && i < rows.Length; i++)
                rows[i] = raw[i] - lowest < valid ? raw[i] : rows[i];
            return;
        }

        for (var i = 0; i < raw.Length && i < rows.Length; i++)
        {
            if (raw[i] - lowest < valid)
                rows[i] = (float)((raw[i] / scale) - subtract);
        }
    }

    private static void StoreDistances(in RecordSlot slot, ReadOnlySpan<uint> raw, Span<double> rows)
    {
        for (var i = 0; i < raw.Length && i < rows.Length; i++)
        {
            if (raw[i] - slot.Lowest < slot.ValidCount)
                rows[i] = raw[i] / slot.Scale;
        }
    }

    private void StoreSpecials(in RecordSlot slot, ReadOnlySpan<uint> raw)
    {
        for (var i = 0; i < raw.Length; i++)
        {
            if (raw[i] - slot.Lowest < slot.ValidCount)
                StoreSpecial(in slot, columns.Count + i, raw[i]);
        }
    }

    private void StoreSpecial(in RecordSlot slot, int row, double raw)
    {
        var value = (raw / slot.Scale) - slot.Subtract;
        switch (slot.Column)
        {
            case RecordColumn.Distance: columns.DistanceArray[row] = value; break;
            case RecordColumn.CadenceFraction: columns.Single(RecordColumn.Cadence)[row] += (float)value; break;
            case RecordColumn.AccumulatedPower: columns.AccumulatedPowers()[row] = value; break;
            case RecordColumn.CompressedAccumulatedPower: columns.AccumulatedPowers()[row] = _accumulatedPower.Advance((uint)value); break;
            case RecordColumn.Balance: columns.Balances()[row] = (byte)value; break;
            default: columns.Single(slot.Column)[row] = (float)value; break;
        }
    }

    private void ReadUnusual(in RecordSlot slot, in RecordBlock block, bool bigEndian)
    {
        var highest = slot.Lowest + (double)slot.ValidCount - 1;
        for (var i = 0; i < block.Count; i++)
        {
            var at = block.At(i, slot.Offset);
            if (slot.Kind == RecordSlot.SlotKind.CompressedSpeedDistance)
                ReadCompressedSpeedDistance(at, columns.Count + i);
            else if (FieldReader.TryReadNumber(at, slot.Type, bigEndian, out var raw) && raw >= slot.Lowest && raw <= highest)
                StoreSpecial(in slot, columns.Count + i, raw);
        }
    }

    private void ReadCompressedSpeedDistance(ReadOnlySpan<byte> at, int row)
    {
        if (at[0] == byte.MaxValue && at[1] == byte.MaxValue && at[2] == byte.MaxValue)
            return;
        columns.Single(RecordColumn.Speed)[row] = (float)((at[0] | ((at[1] & 0x0F) << 8)) / 100.0);
        columns.DistanceArray[row] = _distance.Advance((uint)((at[1] >> 4) | (at[2] << 4))) / 16.0;
    }

    private void ReadDeveloperPower(RecordPlan.DeveloperPowerSlot slot, in RecordBlock block, bool bigEndian)
    {
        for (var i = 0; i < block.Count; i++)
        {
            if (!FieldReader.TryReadNumber(block.At(i, slot.Offset), slot.Type, bigEndian, out var raw))
                continue;
            var watts = (raw / slot.Scale) - slot.Subtract;
            if (watts is >= 0 and <= HighestPower)
                columns.DeveloperPowers()[columns.Count + i] = (float)watts;
        }
    }

    /// <summary>A counter of few bits that starts over when it is full; the first value seen is where it begins.</summary>
    internal struct WrappingCounter(int bits)
    {
        private readonly uint _mask = (uint)((1UL << bits) - 1);
        private uint _last;
        private bool _hasValue;

        public long Total { get; private set; }

        public long Advance(uint value)
        {
            Total = _hasValue ? Total + ((value - _last) & _mask) : value;
            _last = value;
            _hasValue = true;
            return Total;
        }
    }
}
