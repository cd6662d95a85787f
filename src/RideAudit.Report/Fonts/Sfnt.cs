using System.Buffers.Binary;
using System.Text;

namespace RideAudit.Report.Fonts;

/// <summary>A TrueType file's bytes and its table directory.</summary>
/// <remarks>What lies outside the file reads as 0, so that a damaged font draws wrong and never throws.</remarks>
internal sealed class Sfnt
{
    private const uint CollectionTag = 0x74746366;
    private readonly byte[] _font;
    private readonly Dictionary<string, (int At, int Length)> _tables = new(StringComparer.Ordinal);

    /// <param name="font">The file.</param>
    /// <param name="index">Which font of a collection, counted from 0; 0 for a file of one font.</param>
    public Sfnt(byte[] font, int index = 0)
    {
        _font = font;
        var directory = U32(0) == CollectionTag ? S32(12 + (4 * index)) : 0;
        for (var i = 0; i < U16(directory + 4); i++)
        {
            var record = directory + 12 + (16 * i);
            if (record > font.Length - 16)
                break;
            var at = Math.Min(S32(record + 8), font.Length);
            _tables.TryAdd(Encoding.ASCII.GetString(font, record, 4), (at, Math.Min(S32(record + 12), font.Length - at)));
        }
    }

    /// <summary>The file.</summary>
    public byte[] Bytes => _font;

    /// <summary>An unsigned 16-bit number at an offset of the file.</summary>
    public int U16(int at) => at >= 0 && at <= _font.Length - 2 ? BinaryPrimitives.ReadUInt16BigEndian(_font.AsSpan(at)) : 0;

    /// <summary>A signed 16-bit number at an offset of the file.</summary>
    public int S16(int at) => (short)U16(at);

    /// <summary>An unsigned 32-bit number at an offset of the file.</summary>
    public uint U32(int at) => at >= 0 && at <= _font.Length - 4 ? BinaryPrimitives.ReadUInt32BigEndian(_font.AsSpan(at)) : 0;

    /// <summary>An offset or count of 32 bits at an offset of the file, at most half of what an offset can be.</summary>
    public int S32(int at) => (int)Math.Min(U32(at), int.MaxValue / 2);

    /// <summary>Where a table starts; -1 when the font has none of that tag.</summary>
    public int Find(string tag) => _tables.TryGetValue(tag, out var table) ? table.At : -1;

    /// <summary>A table's bytes; empty when the font has none of that tag.</summary>
    public ReadOnlySpan<byte> Table(string tag) =>
        _tables.TryGetValue(tag, out var table) ? _font.AsSpan(table.At, table.Length) : [];

    /// <summary>A font file of these tables.</summary>
    public static byte[] Write(IReadOnlyList<(string Tag, byte[] Table)> tables)
    {
        var start = 12 + (16 * tables.Count);
        var font = new byte[start + tables.Sum(table => Padded(table.Table.Length))];
        Span<byte> span = font;
        var power = 31 - System.Numerics.BitOperations.LeadingZeroCount((uint)tables.Count);
        BinaryPrimitives.WriteUInt32BigEndian(span, 0x00010000);
        BinaryPrimitives.WriteUInt16BigEndian(span[4..], (ushort)tables.Count);
        BinaryPrimitives.WriteUInt16BigEndian(span[6..], (ushort)(16 << power));
        BinaryPrimitives.WriteUInt16BigEndian(span[8..], (ushort)power);
        BinaryPrimitives.WriteUInt16BigEndian(span[10..], (ushort)((16 * tables.Count) - (16 << power)));
        int at = start, record = 12;
        foreach ((var tag, var table) in tables.OrderBy(table => table.Tag, StringComparer.Ordinal))
        {
            table.CopyTo(span[at..]);
            Encoding.ASCII.GetBytes(tag, span[record..]);
            BinaryPrimitives.WriteUInt32BigEndian(span[(record + 4)..], Checksum(span.Slice(at, Padded(table.Length))));
            BinaryPrimitives.WriteInt32BigEndian(span[(record + 8)..], at);
            BinaryPrimitives.WriteInt32BigEndian(span[(record + 12)..], table.Length);
            at += Padded(table.Length);
            record += 16;
        }

        return font;
    }

    private static int Padded(int length) => (length + 3) & ~3;

    private static uint Checksum(ReadOnlySpan<byte> table)
    {
        uint sum = 0;
        for (var at = 0; at < table.Length; at += 4)
            sum = unchecked(sum + BinaryPrimitives.ReadUInt32BigEndian(table[at..]));
        return sum;
    }
}
