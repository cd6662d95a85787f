namespace RideAudit.Report;

/// <summary>Paper sizes.</summary>
public enum Paper
{
    /// <summary>ISO 216 A4, 210 × 297 mm.</summary>
    A4,

    /// <summary>US Letter, 8.5 × 11 in.</summary>
    Letter,
}
