using System.Buffers.Binary;

namespace RideAudit.Fit.Reading;

/// <summary>All that walking needs of a local type: the size of its data messages, -1 if undefined, and where their time is.</summary>
internal readonly record struct LocalShape(int Size, int TimeOffset, bool BigEndian)
{
    public static LocalShape Undefined => new(-1, -1, false);

    /// <summary>The time in a message that has one.</summary>
    public uint TimeIn(ReadOnlySpan<byte> data) => BigEndian
        ? BinaryPrimitives.ReadUInt32BigEndian(data[TimeOffset..])
        : BinaryPrimitives.ReadUInt32LittleEndian(data[TimeOffset..]);
}
