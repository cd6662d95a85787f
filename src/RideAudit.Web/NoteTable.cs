using System.Collections.Immutable;
using System.Text.Json;
using System.Text.RegularExpressions;
using NodaTime.Text;
using RideAudit.Ingest;

namespace RideAudit.Web;

/// <summary>The coach's notes as a plain table: a row a note, with the day whose week it belongs to.</summary>
internal sealed partial class NoteTable
{
    private ImmutableArray<NamedText> _notes = [];
    private bool _isEdited;

    /// <summary>Takes the notes among the files, unless they were edited here.</summary>
    public void Take(FolderContent content) => _notes = _isEdited ? _notes : content.Notes;

    /// <summary>The files with the notes as they are here.</summary>
    public FolderContent In(FolderContent content) => _isEdited ? content with { Notes = _notes } : content;

    /// <summary>The rows as JSON.</summary>
    public string Json() => JsonSerializer.Serialize([.. _notes.Select(n => new Note(n.File, DateOf(n.File), n.Text))], PageJson.Default.Notes);

    /// <summary>Takes the rows as the page has them; a row without a word is no note.</summary>
    public void Set(string rows)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        var given = (JsonSerializer.Deserialize(rows, PageJson.Default.Notes) ?? []).Where(n => !string.IsNullOrWhiteSpace(n.Text));
        _notes = [.. given.Select(n => new NamedText(NameOf(n, names), n.Text)).OrderBy(n => n.File, StringComparer.Ordinal)];
        _isEdited = true;
    }

    private static string NameOf(Note note, HashSet<string> names)
    {
        if (note.File is { } kept && DateOf(kept) == note.Date && names.Add(kept))
            return kept;
        var name = note.Date is { } date ? $"note-{date}" : "note";
        for (var which = 1; ; which++)
        {
            var tried = which == 1 ? $"{name}.md" : $"{name}-{which}.md";
            if (names.Add(tried))
                return tried;
        }
    }

    private static string? DateOf(string file) =>
        Date().Match(file[(file.LastIndexOf('/') + 1)..]) is { Success: true } match && LocalDatePattern.Iso.Parse(match.Value).Success ? match.Value : null;

    [GeneratedRegex(@"(?<![0-9])[0-9]{4}-[0-9]{2}-[0-9]{2}(?![0-9])")]
    private static partial Regex Date();

    /// <summary>One note.</summary>
    /// <param name="File">Its file; null for a new one.</param>
    /// <param name="Date">The date in the file's name, ISO 8601; null without one, and it belongs to the latest week.</param>
    /// <param name="Text">The text.</param>
    internal sealed record Note(string? File, string? Date, string Text);
}
