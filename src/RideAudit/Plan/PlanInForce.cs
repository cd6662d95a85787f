namespace RideAudit.Plan;

/// <summary>A rider's plan with the defaults filled in for one week: what the rules judge against.</summary>
public sealed record PlanInForce
{
    /// <summary>The rider.</summary>
    public required Rider Rider { get; init; }

    /// <summary>Planned hours, h; null when neither given nor derivable.</summary>
    public required double? PlannedHours { get; init; }

    /// <summary>Planned hours came from the weeks before, not from the rider file.</summary>
    public bool PlannedHoursFromHistory { get; init; }

    /// <summary>Weeks that <see cref="PlannedHours"/> is the mean of, when from history.</summary>
    public int HistoryWeeks { get; init; }

    /// <summary>The tier; null without planned hours.</summary>
    public required Tier? Tier { get; init; }

    /// <summary>Every limit by its property.</summary>
    public required Limits Limits { get; init; }
}
