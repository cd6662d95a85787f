namespace RideAudit.Plan;

/// <summary>Which count the intensity split is judged by.</summary>
public enum SplitBy
{
    /// <summary>Seconds in the bands.</summary>
    Time,

    /// <summary>What each ride was for.</summary>
    Session,
}
