using System.Buffers.Binary;

namespace RideAudit.Report.Fonts;

/// <summary>A font's map from characters to glyphs: table <c>cmap</c>, formats 4 and 12.</summary>
internal static class CharacterMap
{
    private const int SegmentMap = 4;
    private const int WideMap = 12;
    private const int Header = 12;
    private const int LastCodePoint = 0x10FFFF;

    /// <summary>Glyphs by code point.</summary>
    /// <returns>Empty for a font without a Unicode map.</returns>
    public static SortedDictionary<int, int> Read(Sfnt font)
    {
        var table = font.Find("cmap");
        var map = new SortedDictionary<int, int>();
        for (var i = 0; table >= 0 && i < font.U16(table + 2); i++)
        {
            var entry = table + 4 + (8 * i);
            var subtable = table + font.S32(entry + 4);
            if (font.U16(entry) is not (0 or 3))
                continue;
            if (font.U16(subtable) == WideMap)
                ReadWide(font, subtable, map);
            else if (font.U16(subtable) == SegmentMap)
                ReadSegments(font, subtable, map);
        }

        return map;
    }

    /// <summary>A table of format 12, one group a run of neighbours.</summary>
    public static byte[] Write(SortedDictionary<int, int> map)
    {
        var groups = Groups(map);
        var table = new byte[Header + 16 + (12 * groups.Count)];
        Span<byte> span = table;
        BinaryPrimitives.WriteUInt16BigEndian(span[2..], 1);
        BinaryPrimitives.WriteUInt16BigEndian(span[4..], 3);
        BinaryPrimitives.WriteUInt16BigEndian(span[6..], 10);
        BinaryPrimitives.WriteInt32BigEndian(span[8..], Header);
        BinaryPrimitives.WriteUInt16BigEndian(span[Header..], WideMap);
        BinaryPrimitives.WriteInt32BigEndian(span[(Header + 4)..], table.Length - Header);
        BinaryPrimitives.WriteInt32BigEndian(span[(Header + 12)..], groups.Count);
        var at = Header + 16;
        foreach ((var first, var last, var glyph) in groups)
        {
            BinaryPrimitives.WriteInt32BigEndian(span[at..], first);
            BinaryPrimitives.WriteInt32BigEndian(span[(at + 4)..], last);
            BinaryPrimitives.WriteInt32BigEndian(span[(at + 8)..], glyph);
            at += 12;
        }

        return table;
    }

    private static List<(int First, int Last, int Glyph)> Groups(SortedDictionary<int, int> map)
    {
        var groups = new List<(int First, int Last, int Glyph)>();
        foreach ((var code, var glyph) in map)
        {
            if (groups.Count > 0 && groups[^1] is var last && code == last.Last + 1 && glyph == last.Glyph + code - last.First)
                groups[^1] = last with { Last = code };
            else
                groups.Add((code, code, glyph));
        }

        return groups;
    }

    private static void ReadWide(Sfnt font, int table, SortedDictionary<int, int> map)
    {
        var after = 0;
        for (var i = 0; i < font.S32(table + 12); i++)
        {
            var group = table + 16 + (12 * i);
            int first = font.S32(group), last = Math.Min(font.S32(group + 4), LastCodePoint);
            if (first < after || last < first)
                break;
            for (var code = first; code <= last; code++)
                map[code] = font.S32(group + 8) + code - first;
            after = last + 1;
        }
    }

    private static void ReadSegments(Sfnt font, int table, SortedDictionary<int, int> map)
    {
        var bytes = font.U16(table + 6);
        for (var at = 0; at < bytes; at += 2)
        {
            var last = font.U16(table + 14 + at);
            var first = font.U16(table + 16 + bytes + at);
            var delta = font.U16(table + 16 + (2 * bytes) + at);
            var rangeAt = table + 16 + (3 * bytes) + at;
            var range = font.U16(rangeAt);
            for (var code = first; code <= last && code != 0xFFFF; code++)
            {
                var glyph = range == 0 ? code : font.U16(rangeAt + range + (2 * (code - first)));
                if (glyph != 0 || range == 0)
                    map[code] = (glyph + delta) & 0xFFFF;
            }
        }
    }
}
