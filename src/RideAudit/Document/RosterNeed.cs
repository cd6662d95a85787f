namespace RideAudit.Document;

/// <summary>Why a rider stands where on a roster, in its order.</summary>
public enum RosterNeed
{
    /// <summary>A rule was broken.</summary>
    Broken,

    /// <summary>There is no review: nobody has seen the week.</summary>
    NoReview,

    /// <summary>A rule is to be watched.</summary>
    Watch,

    /// <summary>Every rule that could be judged was kept.</summary>
    Kept,
}
