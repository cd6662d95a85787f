namespace RideAudit.Report.Fonts;

/// <summary>A font's digits of one width: feature <c>tnum</c> of table <c>GSUB</c>, single substitutions.</summary>
internal static class TabularFigures
{
    private const int SingleSubstitution = 1;

    /// <summary>Points the digits of a character map at their tabular forms; a font without them is left as it is.</summary>
    public static void Apply(Sfnt font, SortedDictionary<int, int> map)
    {
        int[] subtables = [.. new LayoutTable(font, "GSUB", extension: 7).Subtables("tnum", SingleSubstitution).SelectMany(lookup => lookup)];
        for (int digit = '0'; digit <= '9'; digit++)
        {
            if (map.TryGetValue(digit, out var glyph))
                map[digit] = subtables.Select(table => Substitute(font, table, glyph)).FirstOrDefault(found => found is not null) ?? glyph;
        }
    }

    private static int? Substitute(Sfnt font, int table, int glyph)
    {
        var place = LayoutTable.Covered(font, table + font.U16(table + 2), glyph);
        if (place < 0)
            return null;
        return font.U16(table) == 2 ? font.U16(table + 6 + (2 * place)) : (glyph + font.U16(table + 4)) & 0xFFFF;
    }
}
