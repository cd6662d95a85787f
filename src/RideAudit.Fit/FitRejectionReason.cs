namespace RideAudit.Fit;

/// <summary>The two ways a decode can fail; everything else is a result with faults.</summary>
public enum FitRejectionReason
{
    /// <summary>The bytes are not a FIT file.</summary>
    NotFit,

    /// <summary>The file is empty, or a header and nothing more.</summary>
    NoData,
}
