using System.Numerics;

namespace RideAudit.Report.Fonts;

/// <summary>The white between pairs of glyphs: feature <c>kern</c> of table <c>GPOS</c>, pairs by glyph and by class.</summary>
internal sealed class Kerning(Sfnt font)
{
    private const int PairAdjustment = 2;
    private const int AdvanceBit = 0x0004;
    private const int BeforeAdvance = 0x0003;
    private readonly int[][] _lookups = new LayoutTable(font, "GPOS", extension: 9).Subtables("kern", PairAdjustment);

    /// <summary>What is added to the first glyph's advance when the second follows it, in the font's units; mostly 0 or below.</summary>
    public int Between(int first, int second)
    {
        var sum = 0;
        foreach (var subtables in _lookups)
        {
            // In a lookup the first subtable that knows the pair decides.
            foreach (var subtable in subtables)
            {
                if (Adjustment(subtable, first, second) is not { } found)
                    continue;
                sum += found;
                break;
            }
        }

        return sum;
    }

    private int? Adjustment(int table, int first, int second)
    {
        var place = LayoutTable.Covered(font, table + font.U16(table + 2), first);
        if (place < 0)
            return null;
        var format = font.U16(table + 4);
        var size = 2 * (BitOperations.PopCount((uint)format) + BitOperations.PopCount((uint)font.U16(table + 6)));
        var value = font.U16(table) == 1 ? OfPair(table + font.U16(table + 10 + (2 * place)), second, size) : OfClasses(table, first, second, size);
        return value is { } at ? Advance(at, format) : null;
    }

    private int? OfPair(int set, int second, int size)
    {
        int low = 0, high = font.U16(set) - 1;
        while (low <= high)
        {
            var middle = (low + high) / 2;
            var pair = set + 2 + ((2 + size) * middle);
            var glyph = font.U16(pair);
            if (glyph == second)
                return pair + 2;
            if (second < glyph)
                high = middle - 1;
            else
                low = middle + 1;
        }

        return null;
    }

    private int? OfClasses(int table, int first, int second, int size)
    {
        var row = LayoutTable.ClassOf(font, table + font.U16(table + 8), first);
        var column = LayoutTable.ClassOf(font, table + font.U16(table + 10), second);
        var columns = font.U16(table + 14);
        return row < font.U16(table + 12) && column < columns ? table + 16 + (size * ((row * columns) + column)) : null;
    }

    private int Advance(int value, int format) =>
        (format & AdvanceBit) == 0 ? 0 : font.S16(value + (2 * BitOperations.PopCount((uint)(format & BeforeAdvance))));
}
