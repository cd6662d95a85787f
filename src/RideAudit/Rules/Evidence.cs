namespace RideAudit.Rules;

/// <summary>What a rule rests on.</summary>
public enum Evidence
{
    /// <summary>Coaches do it; no source.</summary>
    CommonPractice,

    /// <summary>Coaching handbooks.</summary>
    Handbook,

    /// <summary>A published study.</summary>
    PublishedStudy,
}
