using System.Buffers.Binary;

namespace RideAudit.Report.Fonts;

/// <summary>Cuts a TrueType font down to the glyphs that a document draws; glyph numbers stay as they are.</summary>
/// <remarks>The drawing library's build embeds a font file whole, so what is handed to it holds only what is drawn.</remarks>
internal static class FontSubset
{
    private const int PartsAreWords = 0x0001;
    private const int HasScale = 0x0008;
    private const int MoreParts = 0x0020;
    private const int HasTwoScales = 0x0040;
    private const int HasMatrix = 0x0080;
    private const int FirstPart = 10;
    private const int NamelessPost = 0x00030000;
    private static readonly string[] CopiedTables = ["OS/2", "cvt ", "fpgm", "hhea", "maxp", "name", "prep"];

    /// <summary>A font file with those glyphs and glyph 0.</summary>
    /// <param name="font">The font.</param>
    /// <param name="glyphs">Glyphs drawn.</param>
    /// <returns>Null for a font without TrueType outlines, which cannot be cut down.</returns>
    public static byte[]? Make(Sfnt font, IEnumerable<ushort> glyphs)
    {
        if (font.Find("glyf") < 0 || font.Find("loca") < 0)
            return null;
        SortedSet<int> kept = Closure(font, glyphs);
        (byte[] outlines, byte[] places) = Outlines(font, kept);
        var tables = new List<(string Tag, byte[] Table)> { ("glyf", outlines), ("loca", places) };
        foreach (string tag in CopiedTables.Where(tag => font.Find(tag) >= 0))
            tables.Add((tag, font.Table(tag).ToArray()));
        byte[] head = font.Table("head").ToArray();
        BinaryPrimitives.WriteUInt16BigEndian(head.AsSpan(50), 1);
        tables.Add(("head", head));
        tables.Add(("hmtx", Widths(font, kept)));
        tables.Add(("post", Post(font)));
        SortedDictionary<int, int> map = CharacterMap.Read(font);
        tables.Add(("cmap", CharacterMap.Write(new SortedDictionary<int, int>(map.Where(entry => kept.Contains(entry.Value)).ToDictionary()))));
        return Sfnt.Write(tables);
    }

    private static (int Start, int End) Place(Sfnt font, int glyph)
    {
        int loca = font.Find("loca");
        bool wide = font.U16(font.Find("head") + 50) == 1;
        return wide
            ? (font.S32(loca + (4 * glyph)), font.S32(loca + (4 * glyph) + 4))
            : (font.U16(loca + (2 * glyph)) * 2, font.U16(loca + (2 * glyph) + 2) * 2);
    }

    private static int Count(Sfnt font) => font.U16(font.Find("maxp") + 4);

    private static SortedSet<int> Closure(Sfnt font, IEnumerable<ushort> glyphs)
    {
        var kept = new SortedSet<int>();
        var waiting = new Stack<int>(glyphs.Select(glyph => (int)glyph).Append(0));
        while (waiting.TryPop(out int glyph))
        {
            if (glyph >= Count(font) || !kept.Add(glyph))
                continue;
            foreach (int part in Parts(font, glyph))
                waiting.Push(part);
        }

        return kept;
    }

    private static IEnumerable<int> Parts(Sfnt font, int glyph)
    {
        (int start, int end) = Place(font, glyph);
        int outline = font.Find("glyf") + start;
        if (end <= start || font.S16(outline) >= 0)
            yield break;
        int at = outline + FirstPart, flags;
        do
        {
            flags = font.U16(at);
            yield return font.U16(at + 2);
            at += 4 + ((flags & PartsAreWords) != 0 ? 4 : 2);
            at += (flags & HasScale) != 0 ? 2 : (flags & HasTwoScales) != 0 ? 4 : (flags & HasMatrix) != 0 ? 8 : 0;
        }
        while ((flags & MoreParts) != 0);
    }

    private static (byte[] Outlines, byte[] Places) Outlines(Sfnt font, SortedSet<int> kept)
    {
        int glyf = font.Find("glyf");
        byte[] places = new byte[4 * (Count(font) + 1)];
        using var outlines = new MemoryStream();
        for (int glyph = 0; glyph < Count(font); glyph++)
        {
            BinaryPrimitives.WriteInt32BigEndian(places.AsSpan(4 * glyph), (int)outlines.Length);
            (int start, int end) = Place(font, glyph);
            if (!kept.Contains(glyph) || end <= start)
                continue;
            outlines.Write(font.Bytes, glyf + start, end - start);
            while (outlines.Length % 4 != 0)
                outlines.WriteByte(0);
        }

        BinaryPrimitives.WriteInt32BigEndian(places.AsSpan(4 * Count(font)), (int)outlines.Length);
        return (outlines.ToArray(), places);
    }

    private static byte[] Widths(Sfnt font, SortedSet<int> kept)
    {
        byte[] widths = font.Table("hmtx").ToArray();
        int full = font.U16(font.Find("hhea") + 34);
        for (int glyph = 0; glyph < full - 1; glyph++)
        {
            if (!kept.Contains(glyph))
                widths.AsSpan(4 * glyph, 4).Clear();
        }

        return widths;
    }

    private static byte[] Post(Sfnt font)
    {
        byte[] post = new byte[32];
        ReadOnlySpan<byte> whole = font.Table("post");
        whole[..Math.Min(32, whole.Length)].CopyTo(post);
        BinaryPrimitives.WriteInt32BigEndian(post, NamelessPost);
        return post;
    }
}
