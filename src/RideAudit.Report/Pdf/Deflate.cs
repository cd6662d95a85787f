using System.Buffers.Binary;

namespace RideAudit.Report.Pdf;

/// <summary>Compresses a stream as RFC 1950 and 1951 describe it, always to the same bytes.</summary>
/// <remarks>
/// The runtime's own compression is a native library that differs between systems and versions, and so would the documents. This one is
/// a plain search for repeats in the last 32 KiB and one block with codes of its own; the streams of a document are far under a megabyte.
/// </remarks>
internal static class Deflate
{
    private const int Window = 32768;
    private const int ShortestRepeat = 3;
    private const int LongestRepeat = 258;
    private const int MostTries = 96;
    private const int HashSize = 1 << 15;
    private const int EndOfBlock = 256;
    private const uint AdlerPrime = 65521;

    // RFC 1951, 3.2.5: first length or distance of each code; the extra bits follow from the steps between them.
    private static readonly int[] Lengths =
        [3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83, 99, 115, 131, 163, 195, 227, 258];

    private static readonly int[] Distances =
        [1, 2, 3, 4, 5, 7, 9, 13, 17, 25, 33, 49, 65, 97, 129, 193, 257, 385, 513, 769, 1025, 1537, 2049, 3073, 4097, 6145, 8193, 12289, 16385, 24577];

    /// <summary>The compressed stream, its zlib header and checksum included.</summary>
    public static byte[] Compress(ReadOnlySpan<byte> data)
    {
        var tokens = Tokens(data);
        var symbols = new HuffmanCode(286, 15);
        var distances = new HuffmanCode(30, 15);
        foreach ((var length, var value) in tokens)
        {
            symbols.Count(length == 0 ? value : 257 + Code(Lengths, length));
            if (length > 0)
                distances.Count(Code(Distances, value));
        }

        symbols.Count(EndOfBlock);
        symbols.Build();
        distances.Build();
        var bits = new BitWriter();
        bits.Write(1, 1);
        bits.Write(2, 2);
        HuffmanCode.WriteTables(bits, symbols, distances);
        foreach ((var length, var value) in tokens)
            WriteToken(bits, symbols, distances, length, value);
        symbols.Write(bits, EndOfBlock);
        var checksum = new byte[4];
        BinaryPrimitives.WriteUInt32BigEndian(checksum, Adler(data));
        return [0x78, 0x9C, .. bits.Finish(), .. checksum];
    }

    private static void WriteToken(BitWriter bits, HuffmanCode symbols, HuffmanCode distances, int length, int value)
    {
        if (length == 0)
        {
            symbols.Write(bits, value);
            return;
        }

        int code = Code(Lengths, length), far = Code(Distances, value);
        symbols.Write(bits, 257 + code);
        bits.Write(length - Lengths[code], code < 8 || code == 28 ? 0 : (code / 4) - 1);
        distances.Write(bits, far);
        bits.Write(value - Distances[far], far < 4 ? 0 : (far / 2) - 1);
    }

    private static int Code(int[] starts, int value)
    {
        var at = Array.BinarySearch(starts, value);
        return at >= 0 ? at : ~at - 1;
    }

    /// <summary>Single bytes (length 0), and repeats by length and distance.</summary>
    private static List<(int Length, int Value)> Tokens(ReadOnlySpan<byte> data)
    {
        var tokens = new List<(int Length, int Value)>();
        int[] newest = new int[HashSize], before = new int[data.Length];
        Array.Fill(newest, -1);
        for (var at = 0; at < data.Length;)
        {
            (var length, var distance) = Longest(data, at, newest, before);
            tokens.Add(length == 0 ? (0, data[at]) : (length, distance));
            for (var end = at + Math.Max(1, length); at < end; at++)
                Remember(data, at, newest, before);
        }

        return tokens;
    }

    private static void Remember(ReadOnlySpan<byte> data, int at, int[] newest, int[] before)
    {
        if (at + ShortestRepeat > data.Length)
            return;
        var hash = Hash(data, at);
        before[at] = newest[hash];
        newest[hash] = at;
    }

    private static (int Length, int Distance) Longest(ReadOnlySpan<byte> data, int at, int[] newest, int[] before)
    {
        int most = Math.Min(LongestRepeat, data.Length - at), best = ShortestRepeat - 1, distance = 0;
        if (most < ShortestRepeat)
            return (0, 0);
        var tries = MostTries;
        for (var earlier = newest[Hash(data, at)]; earlier >= 0 && at - earlier <= Window && tries > 0; earlier = before[earlier], tries--)
        {
            var length = data.Slice(at, most).CommonPrefixLength(data.Slice(earlier, most));
            if (length > best)
                (best, distance) = (length, at - earlier);
        }

        return distance == 0 ? (0, 0) : (best, distance);
    }

    private static int Hash(ReadOnlySpan<byte> data, int at) => ((data[at] << 10) ^ (data[at + 1] << 5) ^ data[at + 2]) & (HashSize - 1);

    private static uint Adler(ReadOnlySpan<byte> data)
    {
        uint low = 1, high = 0;
        foreach (var value in data)
        {
            low = (low + value) % AdlerPrime;
            high = (high + low) % AdlerPrime;
        }

        return (high << 16) | low;
    }

    /// <summary>Bits from the lowest of each byte upwards.</summary>
    internal sealed class BitWriter
    {
        private readonly List<byte> _bytes = [];
        private ulong _held;
        private int _count;

        public void Write(int value, int bits)
        {
            _held |= (ulong)(uint)value << _count;
            for (_count += bits; _count >= 8; _count -= 8, _held >>= 8)
                _bytes.Add((byte)_held);
        }

        public List<byte> Finish()
        {
            Write(0, _count == 0 ? 0 : 8 - _count);
            return _bytes;
        }
    }
}
