using System.Globalization;
using System.Text;

namespace RideAudit.Report.Fonts;

/// <summary>One font: which characters it draws, text set in it, and the font cut down to what was drawn. All in managed code.</summary>
/// <remarks>
/// It sets scripts written left to right whose letters keep their shape: Latin, Greek, Cyrillic, Armenian, Georgian, kana, Han and
/// hangul syllables. Pairs are kerned, digits are of one width, a letter and an accent that follow each other are one character. Ligatures and contextual forms are not
/// drawn: their glyphs have no single character to be copied out of a document as.
/// </remarks>
internal sealed class Face
{
    private const int PostScriptName = 6;
    private readonly Sfnt _font;
    private readonly SortedDictionary<int, int> _map;
    private readonly Kerning _kerning;
    private readonly Composition _composition;

    private Face(Sfnt font, int index)
    {
        _font = font;
        Index = index;
        _map = CharacterMap.Read(font);
        TabularFigures.Apply(font, _map);
        _kerning = new Kerning(font);
        _composition = new Composition(font, _map);
        UnitsPerEm = Math.Max(1, font.U16(font.Find("head") + 18));
        Name = ReadName();
    }

    /// <summary>The file.</summary>
    public byte[] Bytes => _font.Bytes;

    /// <summary>Which font of the file, counted from 0.</summary>
    public int Index { get; }

    /// <summary>The name that documents know it by.</summary>
    public string Name { get; }

    /// <summary>The font's units that make its size.</summary>
    public int UnitsPerEm { get; }

    /// <summary>Height above the baseline, the font's units.</summary>
    public int Ascent => _font.S16(_font.Find("hhea") + 4);

    /// <summary>Depth under the baseline, the font's units, below 0.</summary>
    public int Descent => _font.S16(_font.Find("hhea") + 6);

    /// <summary>What holds every glyph: left, bottom, right, top, the font's units.</summary>
    public int[] Box => [.. Enumerable.Range(0, 4).Select(side => _font.S16(_font.Find("head") + 36 + (2 * side)))];

    /// <summary>Null when the bytes are not a font with TrueType outlines and a Unicode map.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="index">Which font of a collection, counted from 0.</param>
    public static Face? Open(byte[] bytes, int index = 0)
    {
        var font = new Sfnt(bytes, index);
        string[] needed = ["cmap", "glyf", "head", "hhea", "hmtx", "loca", "maxp"];
        if (needed.Any(tag => font.Find(tag) < 0) || font.Table("head").Length < 54 || font.Table("hhea").Length < 36 || font.Table("maxp").Length < 6)
            return null;
        var face = new Face(font, index);
        return face._map.Count > 0 ? face : null;
    }

    /// <summary>Whether the font draws every character of a text element.</summary>
    public bool Draws(string element) => element.EnumerateRunes().All(rune => IsInvisible(rune) || Glyph(rune.Value) != 0);

    /// <summary>A character's glyph; 0 when the font has none.</summary>
    public int Glyph(int codePoint) => _map.GetValueOrDefault(codePoint);

    /// <summary>A glyph's advance, the font's units.</summary>
    public int Advance(int glyph)
    {
        var full = _font.U16(_font.Find("hhea") + 34);
        return _font.U16(_font.Find("hmtx") + (4 * Math.Max(0, Math.Min(glyph, full - 1))));
    }

    /// <summary>Sets text, each character by one glyph.</summary>
    /// <param name="text">Text without line breaks.</param>
    /// <param name="size">Size, pt.</param>
    public GlyphRun Shape(string text, float size)
    {
        var glyphs = new List<GlyphRun.Glyph>(text.Length);
        var scale = size / UnitsPerEm;
        int x = 0, before = -1;
        foreach (var codePoint in Composed(text))
        {
            var glyph = Glyph(codePoint);
            x += before < 0 ? 0 : _kerning.Between(before, glyph);
            glyphs.Add(new GlyphRun.Glyph(glyph, codePoint, x * scale));
            x += Advance(glyph);
            before = glyph;
        }

        return new GlyphRun(this, size, glyphs, x * scale);
    }

    /// <summary>A font file that draws those characters alone, as glyphs 1, 2, 3 … in the order given.</summary>
    public byte[] Cut(IReadOnlyList<(int Glyph, int CodePoint)> drawn) => FontCut.Make(_font, drawn);

    private static bool IsInvisible(Rune rune) => rune.Value is 0x200D or (>= 0xFE00 and <= 0xFE0F);

    private List<int> Composed(string text)
    {
        var characters = new List<int>(text.Length);
        foreach (var rune in text.EnumerateRunes().Where(rune => !IsInvisible(rune)))
        {
            var accent = characters.Count > 0 && Rune.GetUnicodeCategory(rune) == UnicodeCategory.NonSpacingMark;
            if (accent && _composition.Of(Glyph(characters[^1]), Glyph(rune.Value)) is { } whole)
                characters[^1] = whole;
            else
                characters.Add(rune.Value);
        }

        return characters;
    }

    private string ReadName()
    {
        var table = _font.Find("name");
        for (var i = 0; table >= 0 && i < _font.U16(table + 2); i++)
        {
            var record = table + 6 + (12 * i);
            if (_font.U16(record + 6) != PostScriptName)
                continue;
            var name = new StringBuilder();
            var at = table + _font.U16(table + 4) + _font.U16(record + 10);
            for (var j = 0; j < _font.U16(record + 8); j++)
                name.Append((char)(_font.U16(at + j) >> 8));
            var plain = string.Concat(name.ToString().Where(c => char.IsAsciiLetterOrDigit(c) || c == '-'));
            if (plain.Length > 0)
                return plain;
        }

        return "Font";
    }
}
