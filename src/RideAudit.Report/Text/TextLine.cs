using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;

namespace RideAudit.Report.Text;

/// <summary>One line of text, shaped and ready to draw.</summary>
internal sealed class TextLine
{
    private readonly List<(float X, Span Span, List<GlyphRun> Runs, float Width)> _pieces = [];

    /// <summary>Width, pt.</summary>
    public float Width { get; private set; }

    /// <summary>Distance to the next baseline, pt.</summary>
    public float Leading { get; private set; }

    /// <summary>Height above the baseline, pt.</summary>
    public float Ascent { get; private set; }

    /// <summary>The text.</summary>
    public string Text => string.Concat(_pieces.Select(piece => piece.Span.Text));

    /// <summary>A line of one piece.</summary>
    public static TextLine Of(FontSet fonts, string text, TextStyle style) => Of(fonts, [new Span(text, style)]);

    /// <summary>A line of several pieces.</summary>
    public static TextLine Of(FontSet fonts, IEnumerable<Span> spans)
    {
        var line = new TextLine();
        foreach (var span in spans)
            line.Append(fonts, span);
        return line;
    }

    /// <summary>A line cut to a width, with an ellipsis where it was cut.</summary>
    public static TextLine Fit(FontSet fonts, string text, TextStyle style, float width) =>
        Of(fonts, FitText(fonts, text, style, width), style);

    /// <summary>A text cut to a width, with an ellipsis where it was cut.</summary>
    public static string FitText(FontSet fonts, string text, TextStyle style, float width)
    {
        if (style.Measure(fonts, text) <= width)
            return text;
        var elements = Elements(text);
        int low = 0, high = elements.Length;
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (style.Measure(fonts, Cut(elements, middle)) <= width)
                low = middle;
            else
                high = middle - 1;
        }

        return Cut(elements, AtWordEnd(elements, low));
    }

    /// <summary>Draws the line with its start and baseline at a point.</summary>
    public void Draw(Surface surface, float x, float baseline)
    {
        foreach ((var offset, var span, var runs, var width) in _pieces)
        {
            surface.Text(runs, span.Style, x + offset, baseline);
            var area = new Area(x + offset, baseline - span.Style.Ascent, x + offset + width, baseline + 2);
            if (span.Target is not null)
                surface.Link(area, span.Target);
            if (span.Address is not null)
                surface.LinkOut(area, span.Address);
        }
    }

    private static string[] Elements(string text)
    {
        var elements = new List<string>();
        var walker = System.Globalization.StringInfo.GetTextElementEnumerator(text);
        while (walker.MoveNext())
            elements.Add(walker.GetTextElement());
        return [.. elements];
    }

    // No word is cut where a whole one fits; the element after the cut tells whether one would be.
    private static int AtWordEnd(string[] elements, int count)
    {
        var end = count;
        while (end > 0 && end < elements.Length && !string.IsNullOrWhiteSpace(elements[end]))
            end--;
        return end > 0 ? end : count;
    }

    private static string Cut(string[] elements, int count) => string.Concat(elements.Take(count)).TrimEnd(' ', '\u00A0', ',', ';', ':') + "…";

    private void Append(FontSet fonts, Span span)
    {
        var runs = fonts.Shape(span.Text, span.Style.Weight, span.Style.Size);
        var width = runs.Sum(run => run.Width);
        _pieces.Add((Width, span, runs, width));
        Width += width;
        Leading = Math.Max(Leading, span.Style.Leading);
        Ascent = Math.Max(Ascent, span.Style.Ascent);
    }
}
