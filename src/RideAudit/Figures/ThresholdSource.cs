using RideAudit.Formatting;

namespace RideAudit.Figures;

/// <summary>Where the threshold power in force on a ride's date came from.</summary>
public enum ThresholdSource
{
    /// <summary>The rider file's dated list.</summary>
    RiderFile,

    /// <summary>The rider file's first entry, used for a ride before it.</summary>
    [Word("rider file, first entry")]
    RiderFileFirstEntry,

    /// <summary>The recording's own session or zones-target value.</summary>
    Recording,

    /// <summary>95 % of the best 20 minutes of the last 90 days, the ride itself left out.</summary>
    Estimate,
}
