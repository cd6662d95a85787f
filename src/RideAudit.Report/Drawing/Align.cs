namespace RideAudit.Report.Drawing;

/// <summary>Which part of a text stands at the given place.</summary>
internal enum Align
{
    Start = 0,
    Middle = 1,
    End = 2,
}
