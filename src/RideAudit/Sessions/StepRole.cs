namespace RideAudit.Sessions;

/// <summary>What a step is there for.</summary>
public enum StepRole
{
    /// <summary>The easy riding a session begins with.</summary>
    WarmUp,

    /// <summary>What the session is ridden for; in an easy session, the riding itself.</summary>
    Work,

    /// <summary>Easy riding between.</summary>
    Between,

    /// <summary>The easy riding a session ends with.</summary>
    CoolDown,
}
