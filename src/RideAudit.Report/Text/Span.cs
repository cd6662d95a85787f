using RideAudit.Report.Drawing;

namespace RideAudit.Report.Text;

/// <summary>A piece of text in one style, perhaps leading to a named place of the document.</summary>
/// <param name="Target">Named destination; null without a link.</param>
internal readonly record struct Span(string Text, TextStyle Style, string? Target = null)
{
    /// <summary>Address outside the document, perhaps relative to it; null without a link.</summary>
    public string? Address { get; init; }
}
