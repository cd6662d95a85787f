namespace RideAudit.Fit;

/// <summary>The channels that records may hold. Times and power of developer fields are always read.</summary>
[Flags]
public enum FitChannels
{
    /// <summary>None of them.</summary>
    None = 0,

    /// <summary>Power of the native field.</summary>
    Power = 1,

    /// <summary>Heart rate.</summary>
    HeartRate = 2,

    /// <summary>Cadence.</summary>
    Cadence = 4,

    /// <summary>Speed.</summary>
    Speed = 8,

    /// <summary>Altitude.</summary>
    Altitude = 16,

    /// <summary>Distance.</summary>
    Distance = 32,

    /// <summary>Accumulated power.</summary>
    AccumulatedPower = 64,

    /// <summary>Balance of the two legs.</summary>
    Balance = 128,

    /// <summary>All of them.</summary>
    All = 255,
}
