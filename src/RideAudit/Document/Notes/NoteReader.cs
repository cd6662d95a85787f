using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;

namespace RideAudit.Document.Notes;

/// <summary>Reads the little Markdown that a note may use: paragraphs, emphasis, links as their words, lists; a heading is a strong paragraph.</summary>
public static partial class NoteReader
{
    /// <summary>The note’s paragraphs in order.</summary>
    /// <param name="note">The note as written.</param>
    public static ImmutableArray<NoteParagraph> Read(string note)
    {
        var paragraphs = ImmutableArray.CreateBuilder<NoteParagraph>();
        var text = new StringBuilder();
        string? marker = null;
        foreach (var line in note.ReplaceLineEndings("\n").Split('\n').Append(""))
        {
            var item = Item().Match(line);
            var heading = Heading().Match(line);
            if (!item.Success && !heading.Success && !string.IsNullOrWhiteSpace(line))
            {
                text.Append(text.Length > 0 ? " " : "").Append(line.Trim());
                continue;
            }
            Close();
            if (heading.Success)
                paragraphs.Add(new NoteParagraph(null, [new NoteSpan(string.Concat(Spans(HeadingOf(heading.Groups[1].Value)).Select(s => s.Text)), NoteWeight.Strong)]));
            if (!item.Success)
                continue;
            marker = MarkerOf(item.Groups[1].Value);
            text.Append(item.Groups[2].Value);
        }
        return paragraphs.ToImmutable();

        void Close()
        {
            if (text.Length > 0)
                paragraphs.Add(new NoteParagraph(marker, [.. Spans(text.ToString().Trim())]));
            text.Clear();
            marker = null;
        }
    }

    /// <summary>The note as plain text: a blank line between paragraphs, none between the items of a list.</summary>
    /// <param name="note">The note as written.</param>
    public static string Plain(string note)
    {
        var text = new StringBuilder();
        NoteParagraph? last = null;
        foreach (var paragraph in Read(note))
        {
            if (last is not null)
                text.Append(last.Marker is not null && paragraph.Marker is not null ? "\n" : "\n\n");
            text.Append(paragraph.Marker is { } marker ? (marker == "•" ? "-" : marker) + " " : "").Append(paragraph.Text);
            last = paragraph;
        }
        return text.ToString();
    }

    // Hashes may close a heading as well.
    private static string HeadingOf(string line) => line.TrimEnd().TrimEnd('#').TrimEnd() is { Length: > 0 } heading ? heading : line.TrimEnd();

    private static string MarkerOf(string marker) => char.IsDigit(marker[0]) ? marker : "•";

    private static IEnumerable<NoteSpan> Spans(string text)
    {
        text = Link().Replace(text, "$1");
        var at = 0;
        foreach (Match match in Emphasised().Matches(text))
        {
            if (match.Index > at)
                yield return new NoteSpan(text[at..match.Index]);
            yield return match.Groups["strong"].Success ? new NoteSpan(match.Groups["strong"].Value, NoteWeight.Strong)
                : match.Groups["light"].Success ? new NoteSpan(match.Groups["light"].Value, NoteWeight.Slanted)
                : new NoteSpan(match.Groups["code"].Value);
            at = match.Index + match.Length;
        }
        if (at < text.Length)
            yield return new NoteSpan(text[at..]);
    }

    [GeneratedRegex(@"^\s*([-*+]|\d{1,3}[.)])\s+(\S.*)$")]
    private static partial Regex Item();

    [GeneratedRegex(@"^\s*#{1,6}\s+(\S.*)$")]
    private static partial Regex Heading();

    [GeneratedRegex(@"\[([^\]\n]{1,500})\]\([^)\n]{0,2000}\)")]
    private static partial Regex Link();

    // Longer stretches stay as they are written: each mark that nothing closes would be sought to the note's end.
    [GeneratedRegex(@"(\*\*|__)(?=\S)(?<strong>.{1,500}?)(?<=\S)\1|`(?<code>[^`]{1,500})`|(?<!\w)([*_])(?=\S)(?<light>.{1,500}?)(?<=\S)\2(?!\w)")]
    private static partial Regex Emphasised();
}
