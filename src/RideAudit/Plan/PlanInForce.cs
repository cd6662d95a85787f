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

    /// <summary>The plan for one week.</summary>
    /// <remarks>
    /// Without planned hours in the rider file they are the mean of the six weeks before the judged one, as far as there are any;
    /// excepted weeks among the six are left out and not replaced by older ones.
    /// The hours are those of an ordinary week: where a lighter week asks for less, the rules apply the factor themselves.
    /// </remarks>
    /// <param name="rider">The rider file.</param>
    /// <param name="weeksBefore">Every week from the first ride's to the one before the judged one, oldest first, none left out; may be empty.</param>
    public static PlanInForce For(Rider rider, IReadOnlyList<WeekHours> weeksBefore)
    {
        var bounds = LimitCatalogue.Override(new Limits(), rider.Plan.LimitOverrides);
        double? planned = rider.Plan.WeeklyHours;
        var used = 0;
        if (planned is null)
            (planned, used) = MeanOf(weeksBefore, bounds.PlannedHoursWeeks);
        Tier? tier = planned is { } hours ? bounds.TierOf(hours) : null;
        return new PlanInForce
        {
            Rider = rider,
            PlannedHours = planned,
            PlannedHoursFromHistory = used > 0,
            HistoryWeeks = used,
            Tier = tier,
            Limits = Limits.For(tier, rider.Experience, planned, rider.Plan),
        };
    }

    private static (double? Hours, int Weeks) MeanOf(IReadOnlyList<WeekHours> weeks, int atMost)
    {
        double sum = 0;
        var count = 0;
        for (var i = Math.Max(0, weeks.Count - atMost); i < weeks.Count; i++)
        {
            if (weeks[i].Excepted)
                continue;
            sum += weeks[i].Hours;
            count++;
        }
        return sum > 0 ? (sum / count, count) : (null, 0);
    }
}
