namespace RideAudit.Report.Fonts;

/// <summary>What a font's substitution and positioning tables (<c>GSUB</c>, <c>GPOS</c>) share: features, lookups, coverage, classes.</summary>
/// <param name="tag">Which of the two.</param>
/// <param name="extension">The lookup type that only points elsewhere: 7 in <c>GSUB</c>, 9 in <c>GPOS</c>.</param>
internal sealed class LayoutTable(Sfnt font, string tag, int extension)
{
    private readonly int _table = font.Find(tag);

    /// <summary>Subtables of one type that a feature uses, by lookup, in the order in which lookups are applied.</summary>
    /// <remarks>A feature is taken for every script and language that the font lists it for.</remarks>
    public int[][] Subtables(string feature, int type)
    {
        if (_table < 0)
            return [];
        var lookups = _table + font.U16(_table + 8);
        return [.. Lookups(feature).Select(lookup => Subtables(lookups + font.U16(lookups + 2 + (2 * lookup)), type)).Where(found => found.Length > 0)];
    }

    /// <summary>A glyph's place in a coverage table; -1 when it is not covered.</summary>
    public static int Covered(Sfnt font, int coverage, int glyph)
    {
        var ranges = font.U16(coverage) == 2;
        int low = 0, high = font.U16(coverage + 2) - 1;
        while (low <= high)
        {
            var middle = (low + high) / 2;
            var entry = coverage + 4 + ((ranges ? 6 : 2) * middle);
            int first = font.U16(entry), last = ranges ? font.U16(entry + 2) : first;
            if (glyph < first)
                high = middle - 1;
            else if (glyph > last)
                low = middle + 1;
            else
                return ranges ? font.U16(entry + 4) + glyph - first : middle;
        }

        return -1;
    }

    /// <summary>A glyph's class in a class table; 0 when the table does not name it.</summary>
    public static int ClassOf(Sfnt font, int classes, int glyph)
    {
        if (font.U16(classes) == 1)
        {
            var place = glyph - font.U16(classes + 2);
            return place >= 0 && place < font.U16(classes + 4) ? font.U16(classes + 6 + (2 * place)) : 0;
        }

        int low = 0, high = font.U16(classes + 2) - 1;
        while (low <= high)
        {
            var middle = (low + high) / 2;
            var range = classes + 4 + (6 * middle);
            if (glyph < font.U16(range))
                high = middle - 1;
            else if (glyph > font.U16(range + 2))
                low = middle + 1;
            else
                return font.U16(range + 4);
        }

        return 0;
    }

    private SortedSet<int> Lookups(string feature)
    {
        var found = new SortedSet<int>();
        var features = _table + font.U16(_table + 6);
        var wanted = ((uint)feature[0] << 24) | ((uint)feature[1] << 16) | ((uint)feature[2] << 8) | feature[3];
        for (var i = 0; i < font.U16(features); i++)
        {
            var entry = features + 2 + (6 * i);
            if (font.U32(entry) != wanted)
                continue;
            var list = features + font.U16(entry + 4);
            for (var j = 0; j < font.U16(list + 2); j++)
                found.Add(font.U16(list + 4 + (2 * j)));
        }

        return found;
    }

    private int[] Subtables(int lookup, int type)
    {
        var found = new List<int>();
        for (var i = 0; i < font.U16(lookup + 4); i++)
        {
            var at = lookup + font.U16(lookup + 6 + (2 * i));
            var kind = font.U16(lookup);
            if (kind == extension)
                (kind, at) = (font.U16(at + 2), at + font.S32(at + 4));
            if (kind == type)
                found.Add(at);
        }

        return [.. found];
    }
}
