using RideAudit.Formatting;

namespace RideAudit.Figures;

/// <summary>Where a ride's training stress came from.</summary>
public enum StressSource
{
    /// <summary>No source: the week names the hours not covered.</summary>
    [Word(null)]
    Unknown,

    /// <summary>Normalised power against threshold power.</summary>
    Power,

    /// <summary>Heart-rate load scaled to one hour at threshold heart rate.</summary>
    HeartRate,

    /// <summary>Session rating times minutes.</summary>
    Rating,
}
