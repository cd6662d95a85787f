using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>What stays the same when rides are moved within a week: the plan, the exceptions and the weeks before, each looked up once.</summary>
internal sealed class Background
{
    private const int DaysBack = 7;
    private const int DaysThatMakeTheWeekAReturn = 4;
    private const int WeeksBeforeALighterOne = 3;

    private readonly Dictionary<(Basis, int), Trust> _trusts = [];
    private readonly Dictionary<int, (double Unknown, double All)> _covers = [];
    private readonly Dictionary<int, double> _longest = [];
    private readonly Lazy<IReadOnlyList<WeekFacts>?> _ordinary;
    private readonly Lazy<(double, double, double)?> _ordinaryMean;
    private readonly Dictionary<(int, int), (RideFigures Ride, double MeanW)?> _bests = [];
    private Trust? _ordinaryTrust;

    public Background(WeekUnderReview review)
    {
        Past = review.Past;
        Plan = review.Plan;
        Calendar = new PlanCalendar(Plan.Rider, PlanTable.Empty);
        var startsOn = review.Week.StartsOn;
        Exceptions = Calendar.Week(startsOn).With(review.Week.Exception);
        AskedHours = HoursAsked(startsOn);
        Returns = Comebacks(startsOn);
        JustBack = IsJustBack(startsOn);
        _ordinary = new(() => FindOrdinary(Past.Weeks.Length), LazyThreadSafetyMode.None);
        _ordinaryMean = new(FindOrdinaryMean, LazyThreadSafetyMode.None);
    }

    public Past Past { get; }

    public PlanInForce Plan { get; }

    /// <summary>Days out, events and lighter days of the rider.</summary>
    public PlanCalendar Calendar { get; }

    public WeekExceptions Exceptions { get; }

    /// <summary>Hours asked of the week: those of its plan table, else the usual ones, less on lighter days and none for days out. Null when unknown, or when none are asked.</summary>
    public double? AskedHours { get; }

    /// <summary>Absences long enough to look at, whose first seven days back reach into the week, earliest first.</summary>
    public ImmutableArray<Absence> Returns { get; }

    /// <summary>Most of the week lies in the first seven days back after illness or a long absence: no more riding is asked for than there was.</summary>
    public bool JustBack { get; }

    /// <summary>The last weeks that were neither lighter nor away, newest first; null when there are too few.</summary>
    public IReadOnlyList<WeekFacts>? OrdinaryWeeks => _ordinary.Value;

    /// <summary>Mean hours, hours above low, and hours without a band of those weeks; null when there are too few.</summary>
    public (double Hours, double AboveLow, double Unbanded)? OrdinaryMean => _ordinaryMean.Value;

    /// <summary>Mean hours of the last ordinary weeks that were over before a day; null when there are too few.</summary>
    public double? UsualHoursBefore(LocalDate day)
    {
        var over = Past.Weeks.Length;
        while (over > 0 && Past.Weeks[over - 1].EndsOn >= day)
            over--;
        return FindOrdinary(over)?.Average(w => w.Hours);
    }

    /// <summary>The weeks right before this one, newest first; null when there are fewer.</summary>
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
        if (!_trusts.TryGetValue((basis, days), out var trust))
        {
            trust = DaysBefore(days).Aggregate(Trust.Sound, (worst, day) => Worse(worst, TrustIn(day, basis)));
            _trusts[(basis, days)] = trust;
        }
        return trust;
    }

    /// <summary>Seconds without a known stress, and all seconds ridden, on the days before the week.</summary>
    public (double Unknown, double All) StressCover(int days)
    {
        if (!_covers.TryGetValue(days, out var cover))
        {
            foreach (var day in DaysBefore(days))
                cover = (cover.Unknown + day.UnknownStressSeconds, cover.All + day.RideSeconds);
            _covers[days] = cover;
        }
        return cover;
    }

    /// <summary>The trust in the thresholds behind the rides of the ordinary weeks.</summary>
    public Trust TrustInOrdinaryWeeks(Basis basis) =>
        _ordinaryTrust ??= (OrdinaryWeeks ?? []).SelectMany(w => w.Days).Aggregate(Trust.Sound, (worst, day) => Worse(worst, TrustIn(day, basis)));

    /// <summary>The longest ride of the days before the week, s; 0 without one.</summary>
    public double LongestRideWithin(int days)
    {
        if (!_longest.TryGetValue(days, out var seconds))
        {
            seconds = DaysBefore(days).SelectMany(d => d.Rides).Select(r => r.DurationSeconds).DefaultIfEmpty(0).Max();
            _longest[days] = seconds;
        }
        return seconds;
    }

    /// <summary>The best mean power over one duration on the days before the week; null without one.</summary>
    public (RideFigures Ride, double MeanW)? BestWithin(int seconds, int days)
    {
        if (!_bests.TryGetValue((seconds, days), out var best))
        {
            foreach (var ride in DaysBefore(days).SelectMany(d => d.Rides))
            {
                foreach (var effort in ride.Bests.Where(b => b.DurationSeconds == seconds && !(b.MeanW <= best?.MeanW)))
                    best = (ride, effort.MeanW);
            }
            _bests[(seconds, days)] = best;
        }
        return best;
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

    private (double, double, double)? FindOrdinaryMean() => OrdinaryWeeks is { Count: > 0 } weeks
        ? (weeks.Average(w => w.Hours), weeks.Average(w => w.Bands.AboveLow) / 3600, weeks.Average(Unbanded.SecondsIn) / 3600)
        : null;

    private double? HoursAsked(LocalDate startsOn)
    {
        if (Plan.AskedByPlanTable)
            return Plan.AskedHours is > 0 and var table ? table : null;
        var share = Calendar.ShareAsked(startsOn, Plan.Limits.LighterWeekFactor);
        // A layout may be called lighter where the rider file has no such days.
        var factor = Exceptions.Lighter && !Calendar.Week(startsOn).Lighter ? Plan.Limits.LighterWeekFactor : 1;
        return Plan.PlannedHours * share * factor is > 0 and var hours ? hours : null;
    }

    private ImmutableArray<Absence> Comebacks(LocalDate startsOn)
    {
        if (Plan.Rider.Exceptions.IsDefaultOrEmpty)
            return [];
        var found = ImmutableArray.CreateBuilder<Absence>();
        for (var day = -DaysBack; day < 6; day++)
        {
            var first = startsOn.PlusDays(day + 1);
            if (!Calendar.IsOut(first) && Calendar.AbsenceBefore(first, 1) is { } absence && absence.Days >= Plan.Limits.ReturnDaysOut)
                found.Add(absence);
        }
        return found.ToImmutable();
    }

    private bool IsJustBack(LocalDate startsOn)
    {
        foreach (var absence in Returns)
        {
            var lastOut = Period.DaysBetween(startsOn, absence.To);
            var back = Math.Min(6, lastOut + DaysBack) - Math.Max(0, lastOut + 1) + 1;
            if ((absence.Ill || absence.Days >= Plan.Limits.ReturnLongDaysOut) && back >= DaysThatMakeTheWeekAReturn)
                return true;
        }
        return false;
    }

    /// <summary>The first week of all, begun later than its second day: a part of a week says nothing of a whole one.</summary>
    private static bool IsPartOfAWeek(WeekFacts week) =>
        new WeekHours(week.StartsOn, week.Hours, FirstRideOn: week.FirstRideOn is { } first && first <= week.EndsOn ? first : null).BeginsLate;

    /// <summary>Lighter than the three weeks before it, as the rule on lighter weeks counts: riders seldom write their lighter weeks down.</summary>
    private bool IsLighterByHours(int index)
    {
        double sum = 0;
        for (var i = index - WeeksBeforeALighterOne; i < index; i++)
            sum += i < 0 ? 0 : Past.Weeks[i].Hours;
        return index >= WeeksBeforeALighterOne && sum > 0
            && !Close.Above(AsShown.Percent(Past.Weeks[index].Hours * WeeksBeforeALighterOne / sum), 100 * Plan.Limits.LighterWeekShare);
    }

    private List<WeekFacts>? FindOrdinary(int before)
    {
        var found = new List<WeekFacts>();
        for (var i = before - 1; i >= 0 && found.Count < Plan.Limits.GrowthWeeks; i--)
        {
            var week = Past.Weeks[i];
            var exceptions = Calendar.Week(week.StartsOn).With(week.Exception);
            if (!exceptions.Lighter && !exceptions.Away && !IsPartOfAWeek(week) && !IsLighterByHours(i))
                found.Add(week);
        }
        return found.Count == Plan.Limits.GrowthWeeks ? found : null;
    }
}
