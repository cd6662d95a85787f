using System.Buffers.Binary;

namespace RideAudit.Report.Text;

/// <summary>Makes a TrueType font's digits all of one width by pointing its character map at its own tabular digits.</summary>
/// <remarks>
/// Figures then align wherever the font is used, and a digit on a page still reads as that digit: a glyph that is reached by an
/// OpenType feature alone has no way back to its character in a PDF. Only the map is replaced; no outline is touched.
/// </remarks>
internal static class TabularFigures
{
    private const uint CharacterMap = 0x636D6170;
    private const uint Substitutions = 0x47535542;
    private const uint TabularNumbers = 0x746E756D;
    private const int SegmentMap = 4;
    private const int WideMap = 12;

    /// <summary>The font with tabular digits; the same bytes when it has none.</summary>
    /// <exception cref="InvalidDataException">The font has no Unicode character map.</exception>
    public static byte[] Apply(byte[] font)
    {
        Dictionary<int, int> tabular = SingleSubstitutions(font);
        SortedDictionary<int, int> map = ReadCharacterMap(font);
        bool changed = false;
        for (int digit = '0'; digit <= '9'; digit++)
        {
            if (map.TryGetValue(digit, out int glyph) && tabular.TryGetValue(glyph, out int even))
            {
                map[digit] = even;
                changed = true;
            }
        }

        return changed ? WithTable(font, CharacterMap, WriteCharacterMap(map)) : font;
    }

    private static int U16(byte[] font, int at) => BinaryPrimitives.ReadUInt16BigEndian(font.AsSpan(at));

    private static int S32(byte[] font, int at) => checked((int)BinaryPrimitives.ReadUInt32BigEndian(font.AsSpan(at)));

    private static int FindRecord(byte[] font, uint tag)
    {
        int tables = U16(font, 4);
        for (int table = 0; table < tables; table++)
        {
            int record = 12 + (16 * table);
            if (BinaryPrimitives.ReadUInt32BigEndian(font.AsSpan(record)) == tag)
                return record;
        }

        return -1;
    }

    private static Dictionary<int, int> SingleSubstitutions(byte[] font)
    {
        var found = new Dictionary<int, int>();
        int record = FindRecord(font, Substitutions);
        if (record < 0)
            return found;
        int table = S32(font, record + 8);
        int features = table + U16(font, table + 6);
        int lookups = table + U16(font, table + 8);
        for (int feature = 0; feature < U16(font, features); feature++)
        {
            int entry = features + 2 + (6 * feature);
            if (BinaryPrimitives.ReadUInt32BigEndian(font.AsSpan(entry)) != TabularNumbers)
                continue;
            int lookupList = features + U16(font, entry + 4);
            for (int i = 0; i < U16(font, lookupList + 2); i++)
                ReadLookup(font, lookups + U16(font, lookups + 2 + (2 * U16(font, lookupList + 4 + (2 * i)))), found);
        }

        return found;
    }

    private static void ReadLookup(byte[] font, int lookup, Dictionary<int, int> found)
    {
        for (int i = 0; i < U16(font, lookup + 4); i++)
        {
            int type = U16(font, lookup);
            int table = lookup + U16(font, lookup + 6 + (2 * i));
            if (type == 7)
            {
                type = U16(font, table + 2);
                table += S32(font, table + 4);
            }

            if (type == 1)
                ReadSingle(font, table, found);
        }
    }

    private static void ReadSingle(byte[] font, int table, Dictionary<int, int> found)
    {
        int index = 0;
        bool listed = U16(font, table) == 2;
        foreach (int glyph in Coverage(font, table + U16(font, table + 2)))
        {
            found[glyph] = listed ? U16(font, table + 6 + (2 * index)) : (glyph + U16(font, table + 4)) & 0xFFFF;
            index++;
        }
    }

    private static IEnumerable<int> Coverage(byte[] font, int table)
    {
        bool ranges = U16(font, table) == 2;
        for (int i = 0; i < U16(font, table + 2); i++)
        {
            int first = ranges ? U16(font, table + 4 + (6 * i)) : U16(font, table + 4 + (2 * i));
            int last = ranges ? U16(font, table + 6 + (6 * i)) : first;
            for (int glyph = first; glyph <= last; glyph++)
                yield return glyph;
        }
    }

    private static SortedDictionary<int, int> ReadCharacterMap(byte[] font)
    {
        int record = FindRecord(font, CharacterMap);
        int table = record < 0 ? 0 : S32(font, record + 8);
        var map = new SortedDictionary<int, int>();
        for (int i = 0; record >= 0 && i < U16(font, table + 2); i++)
        {
            int entry = table + 4 + (8 * i);
            int subtable = table + S32(font, entry + 4);
            if (U16(font, entry) is not (0 or 3))
                continue;
            if (U16(font, subtable) == WideMap)
                ReadWide(font, subtable, map);
            else if (U16(font, subtable) == SegmentMap)
                ReadSegments(font, subtable, map);
        }

        return map.Count > 0 ? map : throw new InvalidDataException("The font has no Unicode character map.");
    }

    private static void ReadWide(byte[] font, int table, SortedDictionary<int, int> map)
    {
        for (int i = 0; i < S32(font, table + 12); i++)
        {
            int group = table + 16 + (12 * i);
            int first = S32(font, group);
            for (int code = first; code <= S32(font, group + 4); code++)
                map[code] = S32(font, group + 8) + code - first;
        }
    }

    private static void ReadSegments(byte[] font, int table, SortedDictionary<int, int> map)
    {
        int bytes = U16(font, table + 6);
        for (int at = 0; at < bytes; at += 2)
        {
            int last = U16(font, table + 14 + at);
            int first = U16(font, table + 16 + bytes + at);
            int delta = U16(font, table + 16 + (2 * bytes) + at);
            int rangeAt = table + 16 + (3 * bytes) + at;
            int range = U16(font, rangeAt);
            for (int code = first; code <= last && code != 0xFFFF; code++)
            {
                int glyph = range == 0 ? code : U16(font, rangeAt + range + (2 * (code - first)));
                if (glyph != 0)
                    map[code] = (glyph + delta) & 0xFFFF;
            }
        }
    }

    private static byte[] WriteCharacterMap(SortedDictionary<int, int> map)
    {
        const int header = 12;
        byte[] table = new byte[header + 16 + (12 * map.Count)];
        Span<byte> span = table;
        BinaryPrimitives.WriteUInt16BigEndian(span[2..], 1);
        BinaryPrimitives.WriteUInt16BigEndian(span[4..], 3);
        BinaryPrimitives.WriteUInt16BigEndian(span[6..], 10);
        BinaryPrimitives.WriteInt32BigEndian(span[8..], header);
        BinaryPrimitives.WriteUInt16BigEndian(span[header..], WideMap);
        BinaryPrimitives.WriteInt32BigEndian(span[(header + 4)..], table.Length - header);
        BinaryPrimitives.WriteInt32BigEndian(span[(header + 12)..], map.Count);
        int at = header + 16;
        foreach ((int code, int glyph) in map)
        {
            BinaryPrimitives.WriteInt32BigEndian(span[at..], code);
            BinaryPrimitives.WriteInt32BigEndian(span[(at + 4)..], code);
            BinaryPrimitives.WriteInt32BigEndian(span[(at + 8)..], glyph);
            at += 12;
        }

        return table;
    }

    private static byte[] WithTable(byte[] font, uint tag, byte[] table)
    {
        int start = (font.Length + 3) & ~3;
        byte[] result = new byte[start + ((table.Length + 3) & ~3)];
        font.CopyTo(result, 0);
        table.CopyTo(result, start);
        int record = FindRecord(font, tag);
        BinaryPrimitives.WriteUInt32BigEndian(result.AsSpan(record + 4), Checksum(result.AsSpan(start)));
        BinaryPrimitives.WriteInt32BigEndian(result.AsSpan(record + 8), start);
        BinaryPrimitives.WriteInt32BigEndian(result.AsSpan(record + 12), table.Length);
        return result;
    }

    private static uint Checksum(ReadOnlySpan<byte> table)
    {
        uint sum = 0;
        for (int at = 0; at < table.Length; at += 4)
            sum = unchecked(sum + BinaryPrimitives.ReadUInt32BigEndian(table[at..]));
        return sum;
    }
}
