using RideAudit.Formatting;

namespace RideAudit.Rides;

/// <summary>What was ridden. Everything that is not cycling is <see cref="Other"/> and counts in hours only.</summary>
public enum RideSport
{
    /// <summary>Cycling, not said which.</summary>
    Cycling,

    /// <summary>Road cycling.</summary>
    Road,

    /// <summary>Mountain biking.</summary>
    Mountain,

    /// <summary>Gravel riding.</summary>
    Gravel,

    /// <summary>On an indoor trainer.</summary>
    Indoor,

    /// <summary>Indoors in a simulated course.</summary>
    Virtual,

    /// <summary>E-bike: time and heart rate count, power is not the rider's alone and is ignored.</summary>
    [Word("e-bike")]
    EBike,

    /// <summary>Not cycling.</summary>
    Other,
}
