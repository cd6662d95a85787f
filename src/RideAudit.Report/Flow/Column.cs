using RideAudit.Report.Drawing;

namespace RideAudit.Report.Flow;

/// <summary>A column of a table.</summary>
/// <param name="X">Where its text starts, or ends when aligned to the end, pt from the table's left.</param>
/// <param name="Width">Room for its text, pt.</param>
/// <param name="Align">Alignment.</param>
internal readonly record struct Column(string Head, float X, float Width, Align Align = Align.Start);
