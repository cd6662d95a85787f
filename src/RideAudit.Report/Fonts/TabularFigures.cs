namespace RideAudit.Report.Fonts;

/// <summary>Makes a TrueType font's digits all of one width by pointing its character map at its own tabular digits.</summary>
/// <remarks>
/// Figures then align wherever the font is used, and a digit on a page still reads as that digit: a glyph that is reached by an
/// OpenType feature alone has no way back to its character in a PDF. Only the map is replaced; no outline is touched.
/// </remarks>
internal static class TabularFigures
{
    private const uint TabularNumbers = 0x746E756D;
    private const int ExtensionLookup = 7;
    private const int SingleLookup = 1;

    /// <summary>The font with tabular digits; the same bytes when it has none.</summary>
    /// <exception cref="InvalidDataException">The font has no Unicode character map.</exception>
    public static byte[] Apply(byte[] bytes)
    {
        var font = new Sfnt(bytes);
        Dictionary<int, int> tabular = Substitutions(font);
        SortedDictionary<int, int> map = CharacterMap.Read(font);
        bool changed = false;
        for (int digit = '0'; digit <= '9'; digit++)
        {
            if (map.TryGetValue(digit, out int glyph) && tabular.TryGetValue(glyph, out int even))
            {
                map[digit] = even;
                changed = true;
            }
        }

        return changed ? Sfnt.Write([.. font.Tags.Select(tag => (tag, tag == "cmap" ? CharacterMap.Write(map) : font.Table(tag).ToArray()))]) : bytes;
    }

    private static Dictionary<int, int> Substitutions(Sfnt font)
    {
        var found = new Dictionary<int, int>();
        int table = font.Find("GSUB");
        if (table < 0)
            return found;
        int features = table + font.U16(table + 6);
        int lookups = table + font.U16(table + 8);
        for (int feature = 0; feature < font.U16(features); feature++)
        {
            int entry = features + 2 + (6 * feature);
            if (font.U32(entry) != TabularNumbers)
                continue;
            int list = features + font.U16(entry + 4);
            for (int i = 0; i < font.U16(list + 2); i++)
                ReadLookup(font, lookups + font.U16(lookups + 2 + (2 * font.U16(list + 4 + (2 * i)))), found);
        }

        return found;
    }

    private static void ReadLookup(Sfnt font, int lookup, Dictionary<int, int> found)
    {
        for (int i = 0; i < font.U16(lookup + 4); i++)
        {
            int type = font.U16(lookup);
            int table = lookup + font.U16(lookup + 6 + (2 * i));
            if (type == ExtensionLookup)
            {
                type = font.U16(table + 2);
                table += font.S32(table + 4);
            }

            if (type == SingleLookup)
                ReadSingle(font, table, found);
        }
    }

    private static void ReadSingle(Sfnt font, int table, Dictionary<int, int> found)
    {
        int index = 0;
        bool listed = font.U16(table) == 2;
        foreach (int glyph in Coverage(font, table + font.U16(table + 2)))
        {
            found[glyph] = listed ? font.U16(table + 6 + (2 * index)) : (glyph + font.U16(table + 4)) & 0xFFFF;
            index++;
        }
    }

    private static IEnumerable<int> Coverage(Sfnt font, int table)
    {
        bool ranges = font.U16(table) == 2;
        for (int i = 0; i < font.U16(table + 2); i++)
        {
            int first = ranges ? font.U16(table + 4 + (6 * i)) : font.U16(table + 4 + (2 * i));
            int last = ranges ? font.U16(table + 6 + (6 * i)) : first;
            for (int glyph = first; glyph <= last; glyph++)
                yield return glyph;
        }
    }
}
