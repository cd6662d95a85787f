namespace RideAudit.Report.Drawing;

/// <summary>A place on a page, pt from its top left corner.</summary>
internal readonly record struct Point(float X, float Y);
