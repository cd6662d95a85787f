using System.Globalization;
using System.Text;
using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;

namespace RideAudit.Report.Text;

/// <summary>Breaks text into lines of a width: at spaces, between ideographs, and inside a word only when the word alone is too long.</summary>
/// <remarks>What belongs together, as a figure and its unit, is held together by a no-break space in the text.</remarks>
internal static class LineBreaker
{
    private const int BalanceSteps = 7;

    /// <summary>At least one line, none wider than <paramref name="width"/> (pt).</summary>
    public static List<TextLine> Break(FontSet fonts, IEnumerable<Span> spans, float width)
    {
        var lines = new List<TextLine>();
        var current = new List<Span>();
        float used = 0;
        foreach (var word in spans.SelectMany(span => Words(fonts, span, width)))
        {
            var bare = word.Style.Measure(fonts, word.Text.TrimEnd(' '));
            if (current.Count > 0 && used + bare > width)
            {
                lines.Add(Close(fonts, current));
                current = [];
                used = 0;
            }

            if (current.Count == 0 && string.IsNullOrWhiteSpace(word.Text) && lines.Count > 0)
                continue;
            current.Add(word);
            used += word.Style.Measure(fonts, word.Text);
        }

        if (current.Count > 0 || lines.Count == 0)
            lines.Add(Close(fonts, current));
        return lines;
    }

    /// <summary>As <see cref="Break"/>, with at most so many lines; an ellipsis says that there was more.</summary>
    public static List<TextLine> Clip(FontSet fonts, Span span, float width, int mostLines)
    {
        var lines = Break(fonts, [span], width);
        if (lines.Count <= mostLines)
            return lines;
        if (mostLines == 0)
            return [];
        var last = TextLine.FitText(fonts, $"{lines[mostLines - 1].Text} {lines[mostLines].Text}", span.Style, width);
        return [.. lines.Take(mostLines - 1), TextLine.Of(fonts, [span with { Text = last }])];
    }

    /// <summary>As <see cref="Break"/>, with lines of about one length: for headings.</summary>
    public static List<TextLine> Balance(FontSet fonts, Span span, float width)
    {
        var lines = Break(fonts, [span], width);
        float low = width / Math.Max(1, lines.Count), high = width;
        for (var step = 0; step < BalanceSteps && lines.Count > 1; step++)
        {
            var middle = (low + high) / 2;
            var narrower = Break(fonts, [span], middle);
            if (narrower.Count == lines.Count)
                (lines, high) = (narrower, middle);
            else
                low = middle;
        }

        return lines;
    }

    private static TextLine Close(FontSet fonts, List<Span> words)
    {
        var joined = new List<Span>();
        foreach (var word in words)
        {
            if (joined.Count > 0 && joined[^1].Style == word.Style && joined[^1].Target == word.Target && joined[^1].Address == word.Address)
                joined[^1] = joined[^1] with { Text = joined[^1].Text + word.Text };
            else
                joined.Add(word);
        }

        if (joined.Count > 0)
            joined[^1] = joined[^1] with { Text = joined[^1].Text.TrimEnd(' ') };
        return TextLine.Of(fonts, joined);
    }

    private static IEnumerable<Span> Words(FontSet fonts, Span span, float width)
    {
        foreach (var word in Pieces(fonts.Printable(span.Text, span.Style.Weight)))
        {
            if (span.Style.Measure(fonts, word.TrimEnd(' ')) <= width)
            {
                yield return span with { Text = word };
                continue;
            }

            foreach (var part in Chop(fonts, word, span.Style, width))
                yield return span with { Text = part };
        }
    }

    private static IEnumerable<string> Pieces(string text)
    {
        var piece = new StringBuilder();
        var elements = StringInfo.GetTextElementEnumerator(text);
        var before = "";
        while (elements.MoveNext())
        {
            var element = elements.GetTextElement();
            var opens = (before == " " && element != " ") || IsIdeograph(element) || IsIdeograph(before) || before == "/";
            if (opens && piece.Length > 0 && element != " " && !IsClosing(element))
            {
                yield return piece.ToString();
                piece.Clear();
            }

            piece.Append(element);
            before = element;
        }

        if (piece.Length > 0)
            yield return piece.ToString();
    }

    private static IEnumerable<string> Chop(FontSet fonts, string word, TextStyle style, float width)
    {
        var part = "";
        var elements = StringInfo.GetTextElementEnumerator(word);
        while (elements.MoveNext())
        {
            var longer = part + elements.GetTextElement();
            if (part.Length > 0 && style.Measure(fonts, longer) > width)
            {
                yield return part;
                longer = elements.GetTextElement();
            }

            part = longer;
        }

        yield return part;
    }

    private static bool IsIdeograph(string element) => element.Length > 0 && element[0] is >= '\u2E80' and <= '\u9FFF' or >= '\uF900' and <= '\uFAFF';

    private static bool IsClosing(string element) => element is "·" or "。" or "、" or "」" or "）" or "." or "," or ")" or ":" or ";";
}
