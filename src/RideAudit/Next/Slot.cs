namespace RideAudit.Next;

/// <summary>What a day is for while patterns are tried.</summary>
internal enum Slot
{
    /// <summary>No riding.</summary>
    Off,

    /// <summary>Endurance or recovery.</summary>
    Easy,

    /// <summary>The long ride.</summary>
    Long,

    /// <summary>A threshold session.</summary>
    Threshold,

    /// <summary>A high session.</summary>
    High,

    /// <summary>As ridden, or as it stands.</summary>
    Settled,
}
