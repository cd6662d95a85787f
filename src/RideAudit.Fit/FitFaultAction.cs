namespace RideAudit.Fit;

/// <summary>What was done about a fault.</summary>
public enum FitFaultAction
{
    /// <summary>Everything was kept; the reader should be told.</summary>
    Warn,

    /// <summary>Only the named item was left out.</summary>
    Skip,

    /// <summary>Something is missing; what could be decoded was kept and the ride counts as recovered.</summary>
    Salvage,

    /// <summary>Nothing usable came of it.</summary>
    Reject,
}
