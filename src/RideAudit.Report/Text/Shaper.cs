using System.Globalization;
using System.Text;
using HarfBuzzSharp;
using RideAudit.Report.Fonts;
using SkiaSharp;
using Buffer = HarfBuzzSharp.Buffer;
using Face = RideAudit.Report.Fonts.Face;

namespace RideAudit.Report.Text;

/// <summary>Turns text into placed glyphs: kerned, each character from a font that has it, or its code point in print.</summary>
internal static class Shaper
{
    // Ligatures and contextual forms are off: their glyphs have no single character to be copied out of a PDF as.
    private static readonly Feature[] Features =
    [
        Feature.Parse("kern=1"), Feature.Parse("liga=0"), Feature.Parse("clig=0"), Feature.Parse("calt=0"),
    ];

    /// <summary>Shapes a text without line breaks.</summary>
    public static List<GlyphRun> Shape(FontSet fonts, string text, TextStyle style)
    {
        var runs = new List<GlyphRun>();
        foreach ((Face face, string part) in Split(fonts, text, style.Weight))
            runs.Add(ShapeRun(face, part, style.Size));
        return runs;
    }

    /// <summary>Width of a text, pt.</summary>
    public static float Measure(FontSet fonts, string text, TextStyle style) => Shape(fonts, text, style).Sum(run => run.Width);

    /// <summary>Text as it can be drawn: no control characters, and code points in print where no font has a glyph.</summary>
    public static string Printable(FontSet fonts, string text, Weight weight) =>
        string.Concat(Split(fonts, text, weight).Select(run => run.Text));

    private static List<(Face Face, string Text)> Split(FontSet fonts, string text, Weight weight)
    {
        var runs = new List<(Face Face, string Text)>();
        TextElementEnumerator elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
        {
            string element = Clean(elements.GetTextElement());
            if (element.Length == 0)
                continue;
            Face? face = fonts.For(weight, element);
            (Face used, string printed) = face is null ? (fonts.Inter(weight), CodePoints(element)) : (face, element);
            if (runs.Count > 0 && ReferenceEquals(runs[^1].Face, used))
                runs[^1] = (used, runs[^1].Text + printed);
            else
                runs.Add((used, printed));
        }

        return runs;
    }

    private static string Clean(string element) => Rune.GetUnicodeCategory(element.EnumerateRunes().First()) switch
    {
        UnicodeCategory.Control => element is "\n" or "\t" or "\r\n" ? " " : "",
        UnicodeCategory.Format or UnicodeCategory.Surrogate => "",
        _ => element,
    };

    private static string CodePoints(string element) =>
        string.Join(' ', element.EnumerateRunes().Select(rune => $"U+{rune.Value:X4}")) + " ";

    private static GlyphRun ShapeRun(Face face, string text, float size)
    {
        using var buffer = new Buffer();
        buffer.AddUtf16(text);
        buffer.GuessSegmentProperties();
        face.Shaping.Shape(buffer, Features);
        ReadOnlySpan<GlyphInfo> infos = buffer.GetGlyphInfoSpan();
        ReadOnlySpan<GlyphPosition> places = buffer.GetGlyphPositionSpan();
        var glyphs = new ushort[infos.Length];
        var positions = new SKPoint[infos.Length];
        float scale = size / face.Typeface.UnitsPerEm;
        float x = 0;
        for (int i = 0; i < infos.Length; i++)
        {
            glyphs[i] = (ushort)infos[i].Codepoint;
            positions[i] = new SKPoint(x + (places[i].XOffset * scale), -places[i].YOffset * scale);
            x += places[i].XAdvance * scale;
        }

        return new GlyphRun(face, glyphs, positions, x);
    }
}
