using RideAudit.Formatting;

namespace RideAudit.Figures;

/// <summary>What a ride's kind was told by.</summary>
public enum KindSource
{
    /// <summary>Nothing: the ride is unrated, or too short for a kind.</summary>
    [Word(null)]
    None,

    /// <summary>Power.</summary>
    Power,

    /// <summary>Heart rate against threshold heart rate.</summary>
    HeartRate,

    /// <summary>The session rating alone.</summary>
    Rating,

    /// <summary>The rider or coach said so in the ride log; it comes before everything measured.</summary>
    Word,
}
