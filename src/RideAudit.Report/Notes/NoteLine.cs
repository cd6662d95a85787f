using RideAudit.Report.Text;

namespace RideAudit.Report.Notes;

/// <summary>A line of the set note.</summary>
/// <param name="Text">The line.</param>
/// <param name="Indent">Distance from the left, pt.</param>
/// <param name="Marker">A list's marker, on the item's first line; null otherwise.</param>
/// <param name="SpaceBefore">White space above, pt.</param>
internal sealed record NoteLine(TextLine Text, float Indent, TextLine? Marker, float SpaceBefore);
