using System.Collections.Immutable;
using RideAudit.Report.Text;

namespace RideAudit.Report.Notes;

/// <summary>A paragraph or a list's item of the coach's note.</summary>
/// <param name="Marker">The item's marker; null for a paragraph.</param>
/// <param name="Spans">The text.</param>
internal sealed record NoteParagraph(string? Marker, ImmutableArray<Span> Spans);
