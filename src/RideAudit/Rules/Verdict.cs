namespace RideAudit.Rules;

/// <summary>How a rule was met; ordered so that the worst of several is the largest.</summary>
public enum Verdict
{
    /// <summary>Data is missing, or the week is excepted: the reason is given.</summary>
    NotJudged,

    /// <summary>The rule was kept.</summary>
    Kept,

    /// <summary>Worth a look.</summary>
    Watch,

    /// <summary>The rule was broken.</summary>
    Broken,
}
