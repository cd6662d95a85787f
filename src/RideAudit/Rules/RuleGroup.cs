namespace RideAudit.Rules;

/// <summary>Rules that say much the same of a week: a headline names only one of a group.</summary>
public enum RuleGroup
{
    /// <summary>A rule of its own.</summary>
    None,

    /// <summary>How hard days lie.</summary>
    HardDays,

    /// <summary>Whether there is enough easy riding.</summary>
    Endurance,

    /// <summary>How fast training grows.</summary>
    Growth,

    /// <summary>How hard the riding is.</summary>
    Intensity,
}
