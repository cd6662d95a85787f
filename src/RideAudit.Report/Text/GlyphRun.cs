using RideAudit.Report.Fonts;
using SkiaSharp;

namespace RideAudit.Report.Text;

/// <summary>Shaped glyphs of one font.</summary>
/// <param name="Face">The font.</param>
/// <param name="Glyphs">Glyph numbers.</param>
/// <param name="Positions">Place of each glyph from the run's start, pt.</param>
/// <param name="Width">Advance of the run, pt.</param>
internal sealed record GlyphRun(Face Face, ushort[] Glyphs, SKPoint[] Positions, float Width);
