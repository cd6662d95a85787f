namespace RideAudit.Fit.Reading;

/// <summary>Record messages that lie one behind the other under one header byte, and so at equal distances.</summary>
/// <param name="bytes">From the first header byte on.</param>
/// <param name="stride">Bytes from one header byte to the next.</param>
/// <param name="count">Messages, 1 to <see cref="MaxCount"/>.</param>
internal readonly ref struct RecordBlock(ReadOnlySpan<byte> bytes, int stride, int count)
{
    /// <summary>Most messages in one block: their bytes should stay in the nearest cache while channel after channel is read.</summary>
    public const int MaxCount = 512;

    public ReadOnlySpan<byte> Bytes { get; } = bytes;

    public int Stride { get; } = stride;

    public int Count { get; } = count;

    /// <summary>The bytes of one message from a field's offset on.</summary>
    public ReadOnlySpan<byte> At(int message, int offset) => Bytes[((message * Stride) + 1 + offset)..];

    /// <summary>Counts the messages with the same header byte from an offset on.</summary>
    /// <param name="bytes">From the first header byte to the data end.</param>
    /// <param name="stride">Bytes of a message with its header byte.</param>
    /// <param name="most">Most messages to count, at least 1; the first is taken to fit.</param>
    public static int CountFrom(ReadOnlySpan<byte> bytes, int stride, int most)
    {
        var limit = Math.Min(Math.Min(most, MaxCount), bytes.Length / stride);
        var header = bytes[0];
        var count = 1;
        for (var at = stride; count < limit && bytes[at] == header; at += stride)
            count++;
        return count;
    }
}
