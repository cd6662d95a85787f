using System.Buffers.Binary;

namespace RideAudit.Ingest;

/// <summary>A short stand-in for a file's bytes, to find the same file under two names. Not cryptographic: who forges an equal one loses a file of their own.</summary>
/// <remarks>Two lanes of 64 bits that take every other word. Each step can be undone, so two files of one length that differ in a single word never meet.</remarks>
internal static class ContentHash
{
    // 2⁶⁴ divided by the golden ratio, and by its square, each made odd: they spread every bit upwards.
    private const ulong FirstFactor = 0x9E3779B97F4A7C15;
    private const ulong SecondFactor = 0x61C8864680B583EB;

    /// <summary>The stand-in, 128 bits.</summary>
    /// <param name="bytes">The whole file.</param>
    public static UInt128 Of(ReadOnlySpan<byte> bytes)
    {
        var (first, second) = ((ulong)bytes.Length, ~(ulong)bytes.Length);
        for (; bytes.Length >= 16; bytes = bytes[16..])
        {
            first = Step(first, BinaryPrimitives.ReadUInt64LittleEndian(bytes), FirstFactor);
            second = Step(second, BinaryPrimitives.ReadUInt64LittleEndian(bytes[8..]), SecondFactor);
        }
        Span<byte> rest = stackalloc byte[16];
        rest.Clear();
        bytes.CopyTo(rest);
        return new UInt128(
            Step(first, BinaryPrimitives.ReadUInt64LittleEndian(rest), FirstFactor),
            Step(second, BinaryPrimitives.ReadUInt64LittleEndian(rest[8..]), SecondFactor));
    }

    private static ulong Step(ulong state, ulong word, ulong factor)
    {
        state = (state ^ word) * factor;
        return state ^ (state >> 32);
    }
}
