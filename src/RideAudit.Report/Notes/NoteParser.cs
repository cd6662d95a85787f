using System.Text;
using System.Text.RegularExpressions;
using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;
using RideAudit.Report.Text;

namespace RideAudit.Report.Notes;

/// <summary>Reads the little Markdown that a note may use: paragraphs, emphasis, lists; a heading is a strong paragraph.</summary>
internal static partial class NoteParser
{
    /// <summary>The note's paragraphs in order.</summary>
    public static List<NoteParagraph> Parse(string note, TextStyle style)
    {
        var paragraphs = new List<NoteParagraph>();
        var text = new StringBuilder();
        string? marker = null;
        foreach (var line in note.ReplaceLineEndings("\n").Split('\n').Append(""))
        {
            var item = Item().Match(line);
            var heading = Heading().Match(line);
            if (item.Success || heading.Success || string.IsNullOrWhiteSpace(line))
            {
                Close();
                marker = item.Success ? MarkerOf(item.Groups[1].Value) : null;
                text.Append(item.Success ? item.Groups[2].Value : heading.Success ? $"**{HeadingOf(heading.Groups[1].Value)}**" : "");
                if (heading.Success)
                    Close();
                continue;
            }

            text.Append(text.Length > 0 ? " " : "").Append(line.Trim());
        }

        return paragraphs;

        void Close()
        {
            if (text.Length > 0)
                paragraphs.Add(new NoteParagraph(marker, [.. Emphasis(text.ToString().Trim(), style)]));
            text.Clear();
            marker = null;
        }
    }

    // Hashes may close a heading as well.
    private static string HeadingOf(string line) => line.TrimEnd().TrimEnd('#').TrimEnd() is { Length: > 0 } heading ? heading : line.TrimEnd();

    private static string MarkerOf(string marker) => char.IsDigit(marker[0]) ? marker : "•";

    private static IEnumerable<Span> Emphasis(string text, TextStyle style)
    {
        var at = 0;
        foreach (Match match in Emphasised().Matches(text))
        {
            if (match.Index > at)
                yield return new Span(text[at..match.Index], style);
            yield return match.Groups["strong"].Success
                ? new Span(match.Groups["strong"].Value, style with { Weight = Weight.SemiBold })
                : new Span(match.Groups["light"].Value, style with { Slanted = true });
            at = match.Index + match.Length;
        }

        if (at < text.Length)
            yield return new Span(text[at..], style);
    }

    [GeneratedRegex(@"^\s*([-*+]|\d{1,3}[.)])\s+(\S.*)$")]
    private static partial Regex Item();

    [GeneratedRegex(@"^\s*#{1,6}\s+(\S.*)$")]
    private static partial Regex Heading();

    // Longer stretches stay as they are written: each mark that nothing closes would be sought to the note's end.
    [GeneratedRegex(@"(\*\*|__)(?=\S)(?<strong>.{1,500}?)(?<=\S)\1|(?<!\w)([*_])(?=\S)(?<light>.{1,500}?)(?<=\S)\2(?!\w)")]
    private static partial Regex Emphasised();
}
