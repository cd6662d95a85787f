namespace RideAudit.Report.Fonts;

/// <summary>Where an accent that is a character of its own stands on its letter: feature <c>mark</c> of table <c>GPOS</c>.</summary>
/// <param name="font">The font.</param>
internal sealed class MarkPlacing(Sfnt font)
{
    private const int MarkToBase = 4;
    private readonly int[][] lookups = new LayoutTable(font, "GPOS", extension: 9).Subtables("mark", MarkToBase);

    /// <summary>The mark's place from the letter's, in the font's units, y upwards; null when the font does not place it.</summary>
    public (int X, int Y)? On(int letter, int mark)
    {
        foreach (int table in lookups.SelectMany(subtables => subtables))
        {
            int marked = LayoutTable.Covered(font, table + font.U16(table + 2), mark);
            int based = LayoutTable.Covered(font, table + font.U16(table + 4), letter);
            if (marked < 0 || based < 0)
                continue;
            int marks = table + font.U16(table + 8), letters = table + font.U16(table + 10);
            int kind = font.U16(marks + 2 + (4 * marked));
            int under = font.U16(letters + 2 + (2 * ((based * font.U16(table + 6)) + kind)));
            if (under == 0)
                continue;
            int from = letters + under, to = marks + font.U16(marks + 4 + (4 * marked));
            return (font.S16(from + 2) - font.S16(to + 2), font.S16(from + 4) - font.S16(to + 4));
        }

        return null;
    }
}
