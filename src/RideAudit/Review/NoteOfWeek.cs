using System.Collections.Immutable;
using System.Text.RegularExpressions;
using NodaTime;
using NodaTime.Text;
using RideAudit.Ingest;

namespace RideAudit.Review;

/// <summary>Chooses the coach’s note of a week among the notes of a folder.</summary>
/// <remarks>A note’s date is that of its name, <c>note-2026-06-08.md</c>, else one in its first line. A note without a date belongs to the latest week alone.</remarks>
internal static partial class NoteOfWeek
{
    /// <summary>The note; several of one week follow each other in the order of their names. Null without one.</summary>
    /// <param name="notes">The folder’s notes, in the order of their names.</param>
    /// <param name="startsOn">The week’s first day.</param>
    /// <param name="isLatest">No week after it is reviewed from this folder yet.</param>
    public static string? Choose(ImmutableArray<NamedText> notes, LocalDate startsOn, bool isLatest)
    {
        if (notes.IsDefaultOrEmpty)
            return null;
        var read = notes.Select(n => (n.File, Note: Read(n))).Where(n => n.Note.Text.Length > 0).ToArray();
        var dated = read.Where(n => n.Note.Date is { } date && date >= startsOn && date < startsOn.PlusDays(7)).Select(n => n.Note.Text).ToArray();
        if (dated.Length > 0)
            return string.Join("\n\n", dated);
        // Of several without a date the one nearest the folder's top.
        return isLatest ? read.Where(n => n.Note.Date is null).OrderBy(n => n.File.Count(c => c == '/')).Select(n => n.Note.Text).FirstOrDefault() : null;
    }

    private static (LocalDate? Date, string Text) Read(NamedText note)
    {
        if (DateIn(note.File[(note.File.LastIndexOf('/') + 1)..]) is { } named)
            return (named, note.Text.Trim());
        var text = note.Text.Trim().ReplaceLineEndings("\n");
        var end = text.IndexOf('\n', StringComparison.Ordinal);
        var first = end < 0 ? text : text[..end];
        if (DateIn(first) is not { } date)
            return (null, text);
        // A line that holds nothing but the date has said what it had to say.
        var onlyTheDate = !Date().Replace(first, "").Any(char.IsLetterOrDigit);
        return (date, onlyTheDate ? text[(end < 0 ? text.Length : end)..].Trim() : text);
    }

    private static LocalDate? DateIn(string text) =>
        Date().Match(text) is { Success: true } match && LocalDatePattern.Iso.Parse(match.Value) is { Success: true } parsed ? parsed.Value : null;

    [GeneratedRegex(@"(?<![0-9])[0-9]{4}-[0-9]{2}-[0-9]{2}(?![0-9])")]
    private static partial Regex Date();
}
