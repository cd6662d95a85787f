namespace RideAudit.Plan;

/// <summary>How long and how seriously the rider has been riding.</summary>
public enum Experience
{
    /// <summary>Under six months of regular riding.</summary>
    New,

    /// <summary>Rides regularly.</summary>
    Regular,

    /// <summary>Races.</summary>
    Racing,
}
