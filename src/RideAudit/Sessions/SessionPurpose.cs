namespace RideAudit.Sessions;

/// <summary>What a session of the library is ridden for.</summary>
internal enum SessionPurpose
{
    /// <summary>Repeats of half a minute to a minute, well above threshold power.</summary>
    ShortIntervals,

    /// <summary>Repeats of three to eight minutes above threshold power.</summary>
    LongIntervals,

    /// <summary>Repeats of ten to twenty minutes just below threshold power.</summary>
    Threshold,

    /// <summary>Repeats that go to and fro across threshold power.</summary>
    OverUnders,

    /// <summary>Long repeats below threshold, hard enough to count and easy enough to add up.</summary>
    SweetSpot,

    /// <summary>Efforts of seconds, as hard as they go.</summary>
    Sprints,

    /// <summary>Short efforts on the day before an event, that wake and do not tire.</summary>
    Openers,

    /// <summary>A measurement of threshold power.</summary>
    Test,

    /// <summary>Easy riding.</summary>
    Endurance,

    /// <summary>The long ride.</summary>
    Long,

    /// <summary>The easiest riding there is.</summary>
    Recovery,
}
