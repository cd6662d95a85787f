namespace RideAudit.Plan;

/// <summary>Only used for the constants of heart-rate load.</summary>
public enum Sex
{
    /// <summary>Not said: the mean of both constants.</summary>
    Unset,

    /// <summary>Female constants.</summary>
    Female,

    /// <summary>Male constants.</summary>
    Male,
}
