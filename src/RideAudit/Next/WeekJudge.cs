using System.Collections.Immutable;
using RideAudit.Rules;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>Has the rules judge layouts of one week, as if each had been ridden.</summary>
internal sealed class WeekJudge
{
    // Any rule outweighs any taste, and a broken one every watch. Hours come after the other rules: they wait, growth too fast does not.
    private const double BrokenWeight = 1000;
    private const double WatchWeight = 100;
    private const double HoursBrokenWeight = 300;
    private const double HoursWatchWeight = 50;
    private const double ProtectingFactor = 2;

    private readonly WeekFrame _frame;
    private readonly Background _background;
    private readonly ImmutableArray<DayFacts> _empty;
    private readonly Dictionary<(StockRide, int, bool), DayFacts> _days = [];
    private readonly (Rule Rule, double Watch, double Broken)[] _rules;

    public WeekJudge(WeekFrame frame)
    {
        _frame = frame;
        _empty = [.. frame.Days.Select(d => d.Ridden ?? DayFacts.Build(d.Date, [], 0, frame.Limits))];
        _background = new Background(Review(Facts([.. Enumerable.Repeat(ImmutableArray<StockRide>.Empty, 7)], rough: false)));
        // The rule on the threshold says nothing of a week's layout.
        _rules = [.. RuleBook.Standard.Rules.Where(r => r is not ThresholdFresh).Select(Weighed)];
    }

    /// <summary>The week ridden so.</summary>
    public WeekFacts Facts(ReadOnlySpan<ImmutableArray<StockRide>> rides, bool rough)
    {
        var built = ImmutableArray.CreateBuilder<DayFacts>(7);
        for (var i = 0; i < 7; i++)
            built.Add(rides[i].IsDefaultOrEmpty ? _empty[i] : Day(rides[i], i, rough));
        return WeekFacts.Build(built.MoveToImmutable(), _frame.LoadBefore, FirstRide(rides), _frame.Exceptions.Leading);
    }

    /// <summary>The weight of what the rules say of a week; 0 when every one is kept or not judged.</summary>
    public double Weigh(WeekFacts week, double atMost = double.MaxValue)
    {
        var judged = new JudgedWeek(week, _background);
        double weight = 0;
        foreach (var (rule, watch, broken) in _rules)
        {
            weight += rule.Decide(judged).Verdict switch { Verdict.Watch => watch, Verdict.Broken => broken, _ => 0 };
            if (weight > atMost)
                break;
        }
        return weight;
    }

    /// <summary>The rules that a week does not keep, in their order.</summary>
    public IEnumerable<Rule> Wanting(WeekFacts week)
    {
        var judged = new JudgedWeek(week, _background);
        return _rules.Select(r => r.Rule).Where(r => r.Decide(judged).IsWanting);
    }

    /// <summary>Every finding of a week.</summary>
    public ImmutableArray<Finding> Judge(WeekFacts week) => RuleBook.Standard.Judge(Review(week));

    public WeekUnderReview Review(WeekFacts week) => new(week, new Past(_frame.Past), _frame.Plan);

    private DayFacts Day(ImmutableArray<StockRide> rides, int index, bool rough)
    {
        if (rides.Length > 1)
            return Build(rides, index, rough);
        if (!_days.TryGetValue((rides[0], index, rough), out var day))
            _days[(rides[0], index, rough)] = day = Build(rides, index, rough);
        return day;
    }

    private DayFacts Build(ImmutableArray<StockRide> rides, int index, bool rough)
    {
        var date = _frame.Days[index].Date;
        return DayFacts.Build(date, rides.Select(r => rough ? r.Rough(date) : r.On(date)), 0, _frame.Limits);
    }

    private NodaTime.LocalDate? FirstRide(ReadOnlySpan<ImmutableArray<StockRide>> rides)
    {
        if (_frame.FirstRideOn is { } known)
            return known;
        for (var i = 0; i < 7; i++)
        {
            if (!rides[i].IsDefaultOrEmpty || !_empty[i].Rides.IsEmpty)
                return _frame.Days[i].Date;
        }
        return null;
    }

    private static (Rule, double, double) Weighed(Rule rule)
    {
        if (rule is WeeklyHours)
            return (rule, HoursWatchWeight, HoursBrokenWeight);
        var factor = rule.Standing.Protects ? ProtectingFactor : 1;
        return (rule, factor * WatchWeight, factor * BrokenWeight);
    }
}
