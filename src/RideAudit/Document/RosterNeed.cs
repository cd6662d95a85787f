namespace RideAudit.Document;

/// <summary>What a rider of a roster needs, or why there is nothing to say.</summary>
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

    /// <summary>An ill week in which nothing that guards the rider was broken.</summary>
    Ill,

    /// <summary>A week away in which nothing that guards the rider was broken.</summary>
    Away,

    /// <summary>A week with an event in it, in which nothing is broken or to be watched.</summary>
    Event,

    /// <summary>Much of the week could not be judged, and nothing of the rest is broken or to be watched.</summary>
    NotJudged,
}
