using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>What stays the same when rides are moved within a week: the plan, the exceptions and the weeks before, each looked up once.</summary>
internal sealed class Background
{
    private readonly Dictionary<(Basis, int), Trust> trusts = [];
    private readonly Dictionary<int, (double Unknown, double All)> covers = [];
    private readonly Lazy<IReadOnlyList<WeekFacts>?> ordinary;

    public Background(WeekUnderReview review)
    {
        Past = review.Past;
        Plan = review.Plan;
        Exceptions = WeekExceptions.For(Plan.Rider.Exceptions, review.Week.StartsOn).With(review.Week.Exception);
        ordinary = new(FindOrdinary, LazyThreadSafetyMode.None);
    }

    public Past Past { get; }

    public PlanInForce Plan { get; }

    public WeekExceptions Exceptions { get; }

    /// <summary>The last weeks that were neither lighter nor away, newest first; null when there are too few.</summary>
    public IReadOnlyList<WeekFacts>? OrdinaryWeeks => ordinary.Value;

    /// <summary>The week's own first weeks before it, newest first; null when there are fewer.</summary>
    public IReadOnlyList<WeekFacts>? WeeksBefore(int count)
    {
        if (Past.Weeks.Length < count)
            return null;
        var weeks = new WeekFacts[count];
        for (var i = 0; i < count; i++)
            weeks[i] = Past.Weeks[^(i + 1)];
        return weeks;
    }

    /// <summary>The trust in the thresholds behind the rides of the days before the week.</summary>
    public Trust TrustIn(Basis basis, int days)
    {
        if (days == 0 || basis == Basis.Time)
            return Trust.Sound;
        if (!trusts.TryGetValue((basis, days), out var trust))
        {
            trust = DaysBefore(days).Aggregate(Trust.Sound, (worst, day) => Worse(worst, TrustIn(day, basis)));
            trusts[(basis, days)] = trust;
        }
        return trust;
    }

    /// <summary>Seconds without a known stress, and all seconds ridden, on the days before the week.</summary>
    public (double Unknown, double All) StressCover(int days)
    {
        if (!covers.TryGetValue(days, out var cover))
        {
            foreach (var day in DaysBefore(days))
                cover = (cover.Unknown + day.UnknownStressSeconds, cover.All + day.RideSeconds);
            covers[days] = cover;
        }
        return cover;
    }

    /// <summary>The trust in the thresholds behind one day's rides.</summary>
    public static Trust TrustIn(DayFacts day, Basis basis)
    {
        var worst = Trust.Sound;
        foreach (var ride in day.Rides)
        {
            var uses = (basis.HasFlag(Basis.Kinds) && ride.MeasuredBy == MeasureSource.Power)
                || (basis.HasFlag(Basis.Stress) && ride.StressFrom == StressSource.Power);
            if (uses && ride.Threshold is { IsEstimate: true } threshold)
                worst = Worse(worst, threshold.IsThin ? Trust.Thin : Trust.Estimate);
        }
        return worst;
    }

    public static Trust Worse(Trust a, Trust b) => a > b ? a : b;

    private IEnumerable<DayFacts> DaysBefore(int days)
    {
        for (var back = 0; back < days && back / 7 < Past.Weeks.Length; back++)
            yield return Past.Weeks[^(back / 7 + 1)].Days[6 - back % 7];
    }

    private List<WeekFacts>? FindOrdinary()
    {
        var found = new List<WeekFacts>();
        for (var i = Past.Weeks.Length - 1; i >= 0 && found.Count < Plan.Limits.GrowthWeeks; i--)
        {
            var week = Past.Weeks[i];
            var exceptions = WeekExceptions.For(Plan.Rider.Exceptions, week.StartsOn).With(week.Exception);
            if (!exceptions.Lighter && !exceptions.Away)
                found.Add(week);
        }
        return found.Count == Plan.Limits.GrowthWeeks ? found : null;
    }
}
