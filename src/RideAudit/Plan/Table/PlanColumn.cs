namespace RideAudit.Plan.Table;

/// <summary>The columns of a plan table that are understood, in the order they are written in.</summary>
public enum PlanColumn
{
    /// <summary>ISO 8601 date.</summary>
    Date,

    /// <summary>A planned kind.</summary>
    Kind,

    /// <summary>Whole minutes.</summary>
    Minutes,

    /// <summary>A short name.</summary>
    Session,

    /// <summary>What to do, in words.</summary>
    Note,

    /// <summary>Points.</summary>
    Stress,

    /// <summary>What to ride, in the grammar of blocks.</summary>
    Blocks,

    /// <summary>What the day is excepted for.</summary>
    Exception,

    /// <summary>Who wrote the row.</summary>
    MadeBy,
}
