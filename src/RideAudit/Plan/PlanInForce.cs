using NodaTime;
using RideAudit.Plan.Table;

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

    /// <summary>Hours asked of the week, h: planned hours × 0.6 on lighter days, shrunk by days out, or the sum of its plan table; null when nothing says.</summary>
    public double? AskedHours { get; init; }

    /// <summary>The week has rows in a plan table, and <see cref="AskedHours"/> is their sum.</summary>
    public bool AskedByPlanTable { get; init; }

    /// <summary>The first week of all was left out of the mean, for its first ride is later than its second day.</summary>
    public bool FirstWeekLeftOut { get; init; }

    /// <summary>The plan for one week.</summary>
    /// <remarks>
    /// Without planned hours in the rider file they are the mean of the six weeks before the judged one, as far as there are any;
    /// excepted weeks among the six, and a first week that begins late, are left out and not replaced by older ones.
    /// <see cref="PlannedHours"/> are those of an ordinary week, and the tier follows them: a week written lighter in a plan table does not make another rider of its rider.
    /// Only where nothing else says, the plan table's own hours stand for them.
    /// </remarks>
    /// <param name="rider">The rider file.</param>
    /// <param name="weeksBefore">Every week from the first ride's to the one before the judged one, oldest first, none left out; may be empty.</param>
    /// <param name="startsOn">The week's first day; null: the plan without dates, as <c>weekly_hours</c> says.</param>
    /// <param name="table">The plan tables; null without any.</param>
    public static PlanInForce For(Rider rider, IReadOnlyList<WeekHours> weeksBefore, LocalDate? startsOn = null, PlanTable? table = null)
    {
        var bounds = LimitCatalogue.Override(new Limits(), rider.Plan.LimitOverrides);
        var calendar = new PlanCalendar(rider, table ?? PlanTable.Empty);
        var planned = startsOn is { } week ? calendar.OrdinaryHours(week) : rider.Plan.WeeklyHours;
        var mean = planned is null ? MeanOf(weeksBefore, bounds.PlannedHoursWeeks) : default;
        planned ??= mean.Hours;
        var asked = startsOn is { } first ? calendar.HoursAsked(first, planned, bounds.LighterWeekFactor) : planned;
        var fromTable = startsOn is { } start && calendar.IsPlanned(start);
        planned ??= fromTable && asked > 0 ? asked : null;
        Tier? tier = planned is { } hours ? bounds.TierOf(hours) : null;
        return new PlanInForce
        {
            Rider = rider,
            PlannedHours = planned,
            PlannedHoursFromHistory = mean.Weeks > 0,
            HistoryWeeks = mean.Weeks,
            FirstWeekLeftOut = mean.FirstLeftOut,
            AskedHours = asked,
            AskedByPlanTable = fromTable,
            Tier = tier,
            Limits = Limits.For(tier, rider.Experience, planned, rider.Plan),
        };
    }

    private static (double? Hours, int Weeks, bool FirstLeftOut) MeanOf(IReadOnlyList<WeekHours> weeks, int atMost)
    {
        double sum = 0;
        var count = 0;
        var late = false;
        for (var i = Math.Max(0, weeks.Count - atMost); i < weeks.Count; i++)
        {
            late |= weeks[i].BeginsLate;
            if (weeks[i].Excepted || weeks[i].BeginsLate)
                continue;
            sum += weeks[i].Hours;
            count++;
        }
        return sum > 0 ? (sum / count, count, late) : (null, 0, late);
    }
}
