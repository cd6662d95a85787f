using System.Buffers.Binary;

namespace RideAudit.Report.Fonts;

/// <summary>A TrueType font's bytes and its table directory.</summary>
internal sealed class Sfnt
{
    private const uint CollectionTag = 0x74746366;
    private readonly byte[] font;
    private readonly int directory;

    /// <param name="font">The file.</param>
    /// <param name="index">Which font of a collection; 0 otherwise.</param>
    public Sfnt(byte[] font, int index = 0)
    {
        this.font = font;
        directory = U32(0) == CollectionTag ? S32(12 + (4 * index)) : 0;
    }

    /// <summary>The file.</summary>
    public byte[] Bytes => font;

    /// <summary>Tags of the tables, in the directory's order.</summary>
    public IEnumerable<string> Tags => Enumerable.Range(0, U16(directory + 4)).Select(table => TagAt(Record(table)));

    /// <summary>An unsigned 16-bit number at an offset of the file.</summary>
    public int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(font.AsSpan(at));

    /// <summary>A signed 16-bit number at an offset of the file.</summary>
    public int S16(int at) => BinaryPrimitives.ReadInt16BigEndian(font.AsSpan(at));

    /// <summary>An unsigned 32-bit number at an offset of the file.</summary>
    public uint U32(int at) => BinaryPrimitives.ReadUInt32BigEndian(font.AsSpan(at));

    /// <summary>An offset or count of 32 bits at an offset of the file.</summary>
    public int S32(int at) => checked((int)U32(at));

    /// <summary>Where a table starts; -1 when the font has none of that tag.</summary>
    public int Find(string tag)
    {
        for (int table = 0; table < U16(directory + 4); table++)
        {
            if (TagAt(Record(table)) == tag)
                return S32(Record(table) + 8);
        }

        return -1;
    }

    /// <summary>A table's bytes; empty when the font has none of that tag.</summary>
    public ReadOnlySpan<byte> Table(string tag)
    {
        for (int table = 0; table < U16(directory + 4); table++)
        {
            if (TagAt(Record(table)) == tag)
                return font.AsSpan(S32(Record(table) + 8), S32(Record(table) + 12));
        }

        return [];
    }

    /// <summary>A font file of these tables.</summary>
    public static byte[] Write(IReadOnlyList<(string Tag, byte[] Table)> tables)
    {
        int start = 12 + (16 * tables.Count);
        byte[] font = new byte[start + tables.Sum(table => Padded(table.Table.Length))];
        Span<byte> span = font;
        int power = (int)Math.Log2(tables.Count);
        BinaryPrimitives.WriteUInt32BigEndian(span, 0x00010000);
        BinaryPrimitives.WriteUInt16BigEndian(span[4..], (ushort)tables.Count);
        BinaryPrimitives.WriteUInt16BigEndian(span[6..], (ushort)(16 << power));
        BinaryPrimitives.WriteUInt16BigEndian(span[8..], (ushort)power);
        BinaryPrimitives.WriteUInt16BigEndian(span[10..], (ushort)((16 * tables.Count) - (16 << power)));
        int at = start, record = 12;
        foreach ((string tag, byte[] table) in tables.OrderBy(table => table.Tag, StringComparer.Ordinal))
        {
            table.CopyTo(span[at..]);
            System.Text.Encoding.ASCII.GetBytes(tag, span[record..]);
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
        for (int at = 0; at < table.Length; at += 4)
            sum = unchecked(sum + BinaryPrimitives.ReadUInt32BigEndian(table[at..]));
        return sum;
    }

    private int Record(int table) => directory + 12 + (16 * table);

    private string TagAt(int record) => System.Text.Encoding.ASCII.GetString(font, record, 4);
}
