using System.Buffers.Binary;
using RideAudit.Fit.Messages;
using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>The running time of a part: full times set it, compressed headers advance it.</summary>
internal sealed class MessageClock
{
    /// <summary>The last known time; <see cref="RecordChannels.NoTime"/> before the first.</summary>
    public uint Last { get; private set; } = RecordChannels.NoTime;

    /// <summary>The time a message carries itself; <see cref="RecordChannels.NoTime"/> if none can be told.</summary>
    public uint Read(MessageDefinition definition, RecordHeader header, ReadOnlySpan<byte> data)
    {
        var time = definition.TimeField < 0 ? RecordChannels.NoTime : ReadField(definition, data);
        if (time == RecordChannels.NoTime && header.IsCompressed && Last != RecordChannels.NoTime)
            time = RecordHeader.ResolveTime(Last, header.Value);
        if (time != RecordChannels.NoTime)
            Last = time;
        return time;
    }

    /// <summary>True if two times are at most so many seconds apart.</summary>
    public static bool IsNear(uint time, uint other, uint seconds) => time - other + seconds <= 2 * seconds;

    /// <summary>The times of a block's messages as far as they are known and near each other; the first message's only has to be known.</summary>
    /// <returns>How many times were read; 0 if the first is unknown.</returns>
    public int ReadRun(MessageDefinition definition, in RecordBlock block, Span<uint> times, uint nearSeconds)
    {
        var kind = definition.BigEndian ? RecordSlot.SlotKind.BigLong : RecordSlot.SlotKind.Long;
        RawGather.Gather(kind, in block, definition.TimeOffset, times[..block.Count]);
        if (times[0] == RecordChannels.NoTime)
            return 0;
        var count = 1;
        while (count < block.Count && times[count] != RecordChannels.NoTime && IsNear(times[count], times[count - 1], nearSeconds))
            count++;
        Last = times[count - 1];
        return count;
    }

    /// <summary>The timestamp field of a message that has one.</summary>
    public static uint ReadField(MessageDefinition definition, ReadOnlySpan<byte> data)
    {
        if (definition.TimeOffset >= 0)
        {
            var at = data[definition.TimeOffset..];
            return definition.BigEndian ? BinaryPrimitives.ReadUInt32BigEndian(at) : BinaryPrimitives.ReadUInt32LittleEndian(at);
        }

        return new MessageView(definition, data).Time(FitConstants.TimestampField) ?? RecordChannels.NoTime;
    }
}
