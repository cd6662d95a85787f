namespace RideAudit.Report.Fonts;

/// <summary>
/// A letter and an accent that are one character together: feature <c>ccmp</c> of table <c>GSUB</c>, ligatures of two glyphs, and the
/// Greek and Cyrillic ones that fonts leave to Unicode's own table.
/// </summary>
/// <remarks>Names of files and folders come so from some systems. The runtime composes characters only with a library that is not carried.</remarks>
/// <param name="map">Its character map.</param>
internal sealed class Composition(Sfnt font, SortedDictionary<int, int> map)
{
    private const int Ligature = 4;

    // Each character, the letter, the accent; the Unicode standard's canonical decompositions of these two scripts' own letters.
    private const string Known = "ά α\u0301 έ ε\u0301 ή η\u0301 ί ι\u0301 ό ο\u0301 ύ υ\u0301 ώ ω\u0301 Ά Α\u0301 Έ Ε\u0301 Ή Η\u0301 Ί Ι\u0301 Ό Ο\u0301 Ύ Υ\u0301 "
        + "Ώ Ω\u0301 ϊ ι\u0308 ϋ υ\u0308 Ϊ Ι\u0308 Ϋ Υ\u0308 ΐ ϊ\u0301 ΰ ϋ\u0301 й и\u0306 Й И\u0306 ё е\u0308 Ё Е\u0308 ї і\u0308 Ї І\u0308 ў у\u0306 Ў У\u0306";
    private readonly Lazy<Dictionary<(int Letter, int Accent), int>> _pairs = new(() => Pairs(font, map));

    /// <summary>The one character; null when the font knows none.</summary>
    /// <param name="letter">The letter's glyph.</param>
    /// <param name="accent">The accent's glyph.</param>
    public int? Of(int letter, int accent) => _pairs.Value.TryGetValue((letter, accent), out var codePoint) ? codePoint : null;

    private static Dictionary<(int Letter, int Accent), int> Pairs(Sfnt font, SortedDictionary<int, int> map)
    {
        var characters = new Dictionary<int, int>();
        foreach ((var codePoint, var glyph) in map)
            characters.TryAdd(glyph, codePoint);
        var pairs = new Dictionary<(int Letter, int Accent), int>();
        var known = Known.Split(' ');
        for (var i = 0; i < known.Length; i += 2)
        {
            if (map.ContainsKey(known[i][0]))
                pairs.TryAdd((map.GetValueOrDefault(known[i + 1][0]), map.GetValueOrDefault(known[i + 1][1])), known[i][0]);
        }

        int[] subtables = [.. new LayoutTable(font, "GSUB", extension: 7).Subtables("ccmp", Ligature).SelectMany(lookup => lookup)];
        foreach (var table in subtables)
        {
            foreach (var letter in characters.Keys)
            {
                var place = LayoutTable.Covered(font, table + font.U16(table + 2), letter);
                if (place >= 0)
                    Read(font, table + font.U16(table + 6 + (2 * place)), letter, characters, pairs);
            }
        }

        return pairs;
    }

    private static void Read(Sfnt font, int set, int letter, Dictionary<int, int> characters, Dictionary<(int Letter, int Accent), int> pairs)
    {
        for (var i = 0; i < font.U16(set); i++)
        {
            var ligature = set + font.U16(set + 2 + (2 * i));
            if (font.U16(ligature + 2) == 2 && characters.TryGetValue(font.U16(ligature), out var codePoint))
                pairs.TryAdd((letter, font.U16(ligature + 4)), codePoint);
        }
    }
}
