namespace RideAudit.Weeks;

/// <summary>What a day was: the kind of its hardest ride.</summary>
public enum DayKind
{
    /// <summary>No ride, and no other activity of half an hour or more.</summary>
    Rest,

    /// <summary>An easy short day.</summary>
    Recovery,

    /// <summary>Easy riding.</summary>
    Endurance,

    /// <summary>Ridden, but nothing could say how hard.</summary>
    Unrated,

    /// <summary>The long easy ride.</summary>
    Long,

    /// <summary>A hard day, around threshold.</summary>
    Threshold,

    /// <summary>A hard day.</summary>
    High,
}
