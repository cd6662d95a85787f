using SkiaSharp;

namespace RideAudit.Report.Fonts;

/// <summary>Which glyphs of which fonts a document draws, and the cut-down fonts to draw it with.</summary>
internal sealed class GlyphLedger : IDisposable
{
    private readonly Dictionary<Face, HashSet<ushort>> drawn = [];
    private readonly Dictionary<Face, SKTypeface> cut = [];

    /// <summary>Glyphs drawn so far, by font.</summary>
    public IReadOnlyDictionary<Face, HashSet<ushort>> Drawn => drawn;

    /// <summary>Notes glyphs as drawn.</summary>
    public void Note(Face face, IEnumerable<ushort> glyphs)
    {
        if (!drawn.TryGetValue(face, out HashSet<ushort>? known))
            drawn[face] = known = [];
        known.UnionWith(glyphs);
    }

    /// <summary>Cuts the fonts down to what was noted.</summary>
    public void Cut()
    {
        foreach ((Face face, HashSet<ushort> glyphs) in drawn)
        {
            if (FontSubset.Make(face.Tables, glyphs.Order()) is { } bytes && SKTypeface.FromData(SKData.CreateCopy(bytes)) is { } typeface)
                cut[face] = typeface;
        }
    }

    /// <summary>What to draw a font with: cut down once that was done.</summary>
    public SKTypeface TypefaceOf(Face face) => cut.TryGetValue(face, out SKTypeface? typeface) ? typeface : face.Typeface;

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (SKTypeface typeface in cut.Values)
            typeface.Dispose();
        cut.Clear();
    }
}
