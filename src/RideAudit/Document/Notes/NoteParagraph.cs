using System.Collections.Immutable;

namespace RideAudit.Document.Notes;

/// <summary>A paragraph or a list’s item of a note.</summary>
/// <param name="Marker">The item’s marker: <c>•</c>, or its number as written; null for a paragraph.</param>
/// <param name="Spans">The text in order.</param>
public sealed record NoteParagraph(string? Marker, ImmutableArray<NoteSpan> Spans)
{
    /// <summary>The text without marks, in one line.</summary>
    public string Text => string.Concat(Spans.Select(s => s.Text));
}
