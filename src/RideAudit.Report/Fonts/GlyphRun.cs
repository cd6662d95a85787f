namespace RideAudit.Report.Fonts;

/// <summary>A piece of text in one font, set: glyphs in the order of their characters.</summary>
/// <param name="Face">The font.</param>
/// <param name="Size">Size, pt.</param>
/// <param name="Glyphs">The glyphs, one a character.</param>
/// <param name="Width">Advance of the whole, pt.</param>
internal sealed record GlyphRun(Face Face, float Size, IReadOnlyList<GlyphRun.Glyph> Glyphs, float Width)
{
    /// <summary>A glyph in its place.</summary>
    /// <param name="Id">Its number in the font; 0 is the font's empty box.</param>
    /// <param name="CodePoint">The character it stands for.</param>
    /// <param name="X">From the run's start to the right, pt.</param>
    internal readonly record struct Glyph(int Id, int CodePoint, float X);
}
