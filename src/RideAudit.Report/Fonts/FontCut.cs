using System.Buffers.Binary;

namespace RideAudit.Report.Fonts;

/// <summary>A TrueType font cut down to what a document draws, its glyphs numbered anew.</summary>
/// <remarks>
/// Every character drawn has a glyph number of its own, also where two characters share one outline (a space and a no-break space, a
/// Greek delta and an increment): so what is copied out of a document is what was put into it.
/// </remarks>
internal sealed class FontCut
{
    private const int PartsAreWords = 0x0001;
    private const int HasScale = 0x0008;
    private const int MoreParts = 0x0020;
    private const int HasTwoScales = 0x0040;
    private const int HasMatrix = 0x0080;
    private const int FirstPart = 10;
    private const int NamelessPost = 0x00030000;
    private static readonly string[] CopiedTables = ["OS/2", "cvt ", "fpgm", "prep"];
    private readonly Sfnt _font;
    private readonly List<int> _glyphs;
    private readonly Dictionary<int, int> _numbers = [];

    private FontCut(Sfnt font, IEnumerable<int> drawn)
    {
        _font = font;
        _glyphs = [0, .. drawn];
        for (var i = 0; i < _glyphs.Count; i++)
        {
            _numbers.TryAdd(_glyphs[i], i);
            _glyphs.AddRange(Parts(_glyphs[i]).Select(at => font.U16(at)).Distinct().Where(part => !_glyphs.Contains(part)).ToList());
        }
    }

    /// <summary>A font file: glyph 0, then <paramref name="drawn"/> as glyphs 1, 2, 3 …, then what those are composed of.</summary>
    /// <param name="font">A font with TrueType outlines.</param>
    /// <param name="drawn">Glyph and character of each.</param>
    public static byte[] Make(Sfnt font, IReadOnlyList<(int Glyph, int CodePoint)> drawn)
    {
        var cut = new FontCut(font, drawn.Select(entry => entry.Glyph));
        var map = new SortedDictionary<int, int>();
        for (var i = 0; i < drawn.Count; i++)
            map.TryAdd(drawn[i].CodePoint, i + 1);
        (var outlines, var places) = cut.Outlines();
        var tables = new List<(string Tag, byte[] Table)>
        {
            ("glyf", outlines), ("loca", places), ("hmtx", cut.Widths()), ("cmap", CharacterMap.Write(map)), ("post", new byte[32]),
            // No name in it, but browsers take no font without the table.
            ("name", [0, 0, 0, 0, 0, 6]),
            ("head", font.Table("head").ToArray()), ("hhea", font.Table("hhea").ToArray()), ("maxp", font.Table("maxp").ToArray()),
        };
        BinaryPrimitives.WriteInt32BigEndian(Table(tables, "post"), NamelessPost);
        BinaryPrimitives.WriteUInt16BigEndian(Table(tables, "head")[50..], 1);
        BinaryPrimitives.WriteUInt16BigEndian(Table(tables, "hhea")[34..], (ushort)cut._glyphs.Count);
        BinaryPrimitives.WriteUInt16BigEndian(Table(tables, "maxp")[4..], (ushort)cut._glyphs.Count);
        tables.AddRange(CopiedTables.Where(tag => font.Find(tag) >= 0).Select(tag => (tag, font.Table(tag).ToArray())));
        return Sfnt.Write(tables);
    }

    private static Span<byte> Table(List<(string Tag, byte[] Table)> tables, string tag) => tables.First(table => table.Tag == tag).Table;

    private (int Start, int Length) Place(int glyph)
    {
        int loca = _font.Find("loca"), glyf = _font.Find("glyf");
        var wide = _font.U16(_font.Find("head") + 50) == 1;
        var start = wide ? _font.S32(loca + (4 * glyph)) : _font.U16(loca + (2 * glyph)) * 2;
        var end = wide ? _font.S32(loca + (4 * glyph) + 4) : _font.U16(loca + (2 * glyph) + 2) * 2;
        var known = glyph < _font.U16(_font.Find("maxp") + 4) && start < end && end <= _font.Table("glyf").Length;
        return known ? (glyf + start, end - start) : (0, 0);
    }

    /// <summary>Where in the file the numbers of a composed glyph's parts stand.</summary>
    private List<int> Parts(int glyph)
    {
        var found = new List<int>();
        (var start, var length) = Place(glyph);
        int at = start + FirstPart, flags = length > 0 && _font.S16(start) < 0 ? MoreParts : 0;
        while ((flags & MoreParts) != 0 && at + 4 <= start + length)
        {
            flags = _font.U16(at);
            found.Add(at + 2);
            at += 4 + ((flags & PartsAreWords) != 0 ? 4 : 2);
            at += (flags & HasScale) != 0 ? 2 : (flags & HasTwoScales) != 0 ? 4 : (flags & HasMatrix) != 0 ? 8 : 0;
        }

        return found;
    }

    private (byte[] Outlines, byte[] Places) Outlines()
    {
        var places = new byte[4 * (_glyphs.Count + 1)];
        using var outlines = new MemoryStream();
        for (var i = 0; i < _glyphs.Count; i++)
        {
            (var start, var length) = Place(_glyphs[i]);
            var outline = _font.Bytes.AsSpan(start, length).ToArray();
            foreach (var at in Parts(_glyphs[i]))
                BinaryPrimitives.WriteUInt16BigEndian(outline.AsSpan(at - start), (ushort)_numbers[_font.U16(at)]);
            outlines.Write(outline);
            while (outlines.Length % 4 != 0)
                outlines.WriteByte(0);
            BinaryPrimitives.WriteInt32BigEndian(places.AsSpan(4 * (i + 1)), (int)outlines.Length);
        }

        return (outlines.ToArray(), places);
    }

    private byte[] Widths()
    {
        var widths = new byte[4 * _glyphs.Count];
        int table = _font.Find("hmtx"), full = _font.U16(_font.Find("hhea") + 34);
        for (var i = 0; i < _glyphs.Count; i++)
        {
            var glyph = _glyphs[i];
            var bearing = glyph < full ? table + (4 * glyph) + 2 : table + (4 * full) + (2 * (glyph - full));
            BinaryPrimitives.WriteUInt16BigEndian(widths.AsSpan(4 * i), (ushort)_font.U16(table + (4 * Math.Min(glyph, full - 1))));
            BinaryPrimitives.WriteInt16BigEndian(widths.AsSpan((4 * i) + 2), (short)_font.S16(bearing));
        }

        return widths;
    }
}
