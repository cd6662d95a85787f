using System.Buffers.Binary;
using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>Walks messages by their sizes without reading them, to see whether a stretch of bytes makes sense.</summary>
internal ref struct StreamWalker(ReadOnlySpan<byte> bytes, int end, Span<StreamWalker.LocalShape> locals, TimeWindow window)
{
    private readonly ReadOnlySpan<byte> _bytes = bytes;
    private readonly Span<LocalShape> _locals = locals;
    private readonly int _end = end;
    private readonly TimeWindow _window = window;

    /// <summary>Messages walked.</summary>
    public int Messages { get; private set; }

    /// <summary>Data messages with a time inside the window.</summary>
    public int Timed { get; private set; }

    public int Position { get; private set; }

    /// <summary>True if the walk ended where the data end, or just before a closing CRC.</summary>
    public readonly bool ReachedEnd => Position == _end || Position == _end - FitConstants.CrcSize;

    /// <summary>Walks until something makes no sense, the data end, or the number of messages is reached.</summary>
    public void Walk(int from, int maxMessages)
    {
        Position = from;
        while (Messages < maxMessages && Position < _end && Step())
            Messages++;
    }

    private bool Step()
    {
        RecordHeader header = new(_bytes[Position]);
        return header.IsDefinition ? StepDefinition(header) : StepData(header);
    }

    private bool StepDefinition(RecordHeader header)
    {
        if (!DefinitionShape.TryMeasure(_bytes[Position.._end], out var shape) || !shape.IsPlausible)
            return false;
        _locals[header.LocalType] = new LocalShape(shape.DataSize, shape.TimeOffset, shape.BigEndian);
        Position += shape.Length;
        return true;
    }

    private bool StepData(RecordHeader header)
    {
        var shape = _locals[header.LocalType];
        if (shape.Size < 0 || shape.Size > _end - Position - 1)
            return false;
        if (shape.TimeOffset >= 0)
        {
            var time = shape.TimeIn(_bytes[(Position + 1)..]);
            if (time != uint.MaxValue && !_window.Holds(time))
                return false;
            Timed += time == uint.MaxValue ? 0 : 1;
        }

        Position += 1 + shape.Size;
        return true;
    }

    /// <summary>All that walking needs of a local type: the size of its data messages, -1 if undefined, and where their time is.</summary>
    internal readonly record struct LocalShape(int Size, int TimeOffset, bool BigEndian)
    {
        public static LocalShape Undefined => new(-1, -1, false);

        /// <summary>The time in a message that has one.</summary>
        public uint TimeIn(ReadOnlySpan<byte> data) => BigEndian
            ? BinaryPrimitives.ReadUInt32BigEndian(data[TimeOffset..])
            : BinaryPrimitives.ReadUInt32LittleEndian(data[TimeOffset..]);
    }
}
