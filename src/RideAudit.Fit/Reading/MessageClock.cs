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
        uint time = definition.TimeField < 0 ? RecordChannels.NoTime : ReadField(definition, data);
        if (time == RecordChannels.NoTime && header.IsCompressed && Last != RecordChannels.NoTime)
            time = RecordHeader.ResolveTime(Last, header.Value);
        if (time != RecordChannels.NoTime)
            Last = time;
        return time;
    }

    private static uint ReadField(MessageDefinition definition, ReadOnlySpan<byte> data)
    {
        if (definition.TimeOffset >= 0)
        {
            ReadOnlySpan<byte> at = data[definition.TimeOffset..];
            return definition.BigEndian ? BinaryPrimitives.ReadUInt32BigEndian(at) : BinaryPrimitives.ReadUInt32LittleEndian(at);
        }

        return new MessageView(definition, data).Time(FitConstants.TimestampField) ?? RecordChannels.NoTime;
    }
}
