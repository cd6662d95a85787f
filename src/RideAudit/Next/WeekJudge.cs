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

    // Which two days are the heaviest is a matter of some points: the rule is asked once more with each pair of days it looks at
    // a little heavier, from the one over the border before to the one that ends on the fifth day.
    private const int Roads = 6;

    private readonly WeekFrame _frame;
    private readonly Background _background;
    private readonly ImmutableArray<DayFacts> _empty;
    private readonly Dictionary<(StockRide, int, Road), DayFacts> _days = [];
    private readonly (Rule Rule, double Watch, double Broken)[] _rules;
    private readonly (Rule Rule, double Watch, double Broken) _restAfterLoad;
    private readonly (Rule Rule, double Watch, double Broken) _monotony;

    public WeekJudge(WeekFrame frame)
    {
        _frame = frame;
        _empty = [.. frame.Days.Select(d => d.Ridden ?? DayFacts.Build(d.Date, [], 0, frame.Limits))];
        _background = new Background(Review(Facts([.. Enumerable.Repeat(ImmutableArray<StockRide>.Empty, 7)])));
        // The rule on the threshold says nothing of a week's layout.
        _rules = [.. RuleBook.Standard.Rules.Where(r => r is not ThresholdFresh).Select(Weighed)];
        _restAfterLoad = _rules.Single(r => r.Rule is RestAfterLoad);
        _monotony = _rules.Single(r => r.Rule is Monotony);
    }

    /// <summary>The week ridden so.</summary>
    /// <param name="rides">The rides of each day.</param>
    /// <param name="road">What they are ridden on.</param>
    /// <param name="heavyFrom">The first of two days that cost more than the others; null where none do.</param>
    public WeekFacts Facts(ReadOnlySpan<ImmutableArray<StockRide>> rides, Road road = Road.Paper, int? heavyFrom = null)
    {
        var built = ImmutableArray.CreateBuilder<DayFacts>(7);
        for (var i = 0; i < 7; i++)
            built.Add(rides[i].IsDefaultOrEmpty ? _empty[i] : Day(rides[i], i, i - heavyFrom is 0 or 1 ? Road.Heavy : road));
        return WeekFacts.Build(built.MoveToImmutable(), _frame.LoadBefore, FirstRide(rides), _frame.Exceptions.Leading);
    }

    /// <summary>The weight of a layout on paper and on the road, the worse of them; 0 when every rule is kept or not judged.</summary>
    /// <param name="written">The layout on paper.</param>
    /// <param name="rides">Its rides.</param>
    /// <param name="atMost">Where it is more, how much more does not matter.</param>
    public double Weigh(WeekFacts written, ReadOnlySpan<ImmutableArray<StockRide>> rides, double atMost = double.MaxValue)
    {
        var weight = Weigh(written, atMost);
        for (var i = 0; i < Roads && weight <= atMost; i++)
            weight = Math.Max(weight, i == 0 ? Weigh(Facts(rides, Road.Uneven), atMost) : WeightOf(_restAfterLoad, Facts(rides, Road.Uneven, i - 2)));
        return weight <= atMost ? Math.Max(weight, LevelledWeight(written, rides)) : weight;
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

    /// <summary>The rules that a layout does not keep, on paper or on the road, in their order.</summary>
    public Rule[] Wanting(ReadOnlySpan<ImmutableArray<StockRide>> rides)
    {
        var found = Wanting(Facts(rides)).Union(Wanting(Facts(rides, Road.Uneven))).ToHashSet();
        for (var i = 1; i < Roads; i++)
        {
            if (WeightOf(_restAfterLoad, Facts(rides, Road.Uneven, i - 2)) > 0)
                found.Add(_restAfterLoad.Rule);
        }
        if (LevelledWeight(Facts(rides), rides) > 0)
            found.Add(_monotony.Rule);
        return [.. _rules.Select(r => r.Rule).Where(found.Contains)];
    }

    /// <summary>Every finding of a week.</summary>
    public ImmutableArray<Finding> Judge(WeekFacts week) => RuleBook.Standard.Judge(Review(week));

    public WeekUnderReview Review(WeekFacts week) => new(week, new Past(_frame.Past), _frame.Plan);

    private IEnumerable<Rule> Wanting(WeekFacts week)
    {
        var judged = new JudgedWeek(week, _background);
        return _rules.Select(r => r.Rule).Where(r => r.Decide(judged).IsWanting);
    }

    private double WeightOf((Rule Rule, double Watch, double Broken) rule, WeekFacts week) =>
        rule.Rule.Decide(new JudgedWeek(week, _background)).Verdict switch { Verdict.Watch => rule.Watch, Verdict.Broken => rule.Broken, _ => 0 };

    // Days grow alike in two ways: those that should stand out cost no more than written and the easy ones do, or the heaviest day alone falls short of the others.
    private double LevelledWeight(WeekFacts written, ReadOnlySpan<ImmutableArray<StockRide>> rides)
    {
        var heaviest = 0;
        for (var i = 1; i < 7; i++)
            heaviest = written.Days[i].Stress > written.Days[heaviest].Stress ? i : heaviest;
        var built = ImmutableArray.CreateBuilder<DayFacts>(7);
        for (var i = 0; i < 7; i++)
        {
            var road = i == heaviest ? Road.Paper : written.Days[i].IsHard ? Road.Uneven : Road.Levelling;
            built.Add(rides[i].IsDefaultOrEmpty ? _empty[i] : Day(rides[i], i, road));
        }
        var levelled = WeekFacts.Build(built.MoveToImmutable(), _frame.LoadBefore, FirstRide(rides), _frame.Exceptions.Leading);
        return Math.Max(WeightOf(_monotony, levelled), WeightOf(_monotony, Facts(rides, Road.Levelling)));
    }

    private DayFacts Day(ImmutableArray<StockRide> rides, int index, Road road)
    {
        if (rides.Length > 1)
            return Build(rides, index, road);
        if (!_days.TryGetValue((rides[0], index, road), out var day))
            _days[(rides[0], index, road)] = day = Build(rides, index, road);
        return day;
    }

    private DayFacts Build(ImmutableArray<StockRide> rides, int index, Road road)
    {
        var date = _frame.Days[index].Date;
        return DayFacts.Build(date, rides.Select(r => r.On(date, road)), 0, _frame.Limits);
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

    private (Rule, double, double) Weighed(Rule rule)
    {
        // A lighter week that waits is a choice: no layout is to be shorter for it.
        if (rule is LighterWeek && _frame.LighterWaits is not null)
            return (rule, 0, 0);
        if (rule is WeeklyHours)
            return (rule, HoursWatchWeight, HoursBrokenWeight);
        var factor = rule.Standing.Protects ? ProtectingFactor : 1;
        return (rule, factor * WatchWeight, factor * BrokenWeight);
    }
}
