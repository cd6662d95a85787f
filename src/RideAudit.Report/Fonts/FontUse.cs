namespace RideAudit.Report.Fonts;

/// <summary>Which characters of a font a document draws, in the order first met.</summary>
/// <param name="face">The font.</param>
internal sealed class FontUse(Face face)
{
    private readonly Dictionary<(int Glyph, int CodePoint), int> _numbers = [];
    private readonly List<(int Glyph, int CodePoint)> _drawn = [];

    /// <summary>The font.</summary>
    public Face Face => face;

    /// <summary>Glyph and character of each; the first is number 1.</summary>
    public IReadOnlyList<(int Glyph, int CodePoint)> Drawn => _drawn;

    /// <summary>Notes a character as drawn; returns its glyph number in the cut font.</summary>
    public int Number(GlyphRun.Glyph glyph)
    {
        (int, int) key = (glyph.Id, glyph.CodePoint);
        if (_numbers.TryGetValue(key, out var number))
            return number;
        _drawn.Add(key);
        return _numbers[key] = _drawn.Count;
    }

    /// <summary>A font file of what was drawn and nothing else.</summary>
    public byte[] Cut() => face.Cut(_drawn);
}
