namespace RideAudit.Cli.Output;

/// <summary>The paper the review is set on.</summary>
internal enum Paper
{
    /// <summary>210 × 297 mm.</summary>
    A4,

    /// <summary>8.5 × 11 in.</summary>
    Letter,
}
