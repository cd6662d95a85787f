using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Rules;
using RideAudit.Weeks;

namespace RideAudit.Review;

/// <summary>The weeks up to the reviewed one, each with the plan that was in force for it, as that week's own review would have had it, and judged once.</summary>
internal sealed class PastWeeks(Workbook book, PlanTable table)
{
    private readonly Dictionary<int, PlanInForce> _plans = [];
    private readonly Dictionary<int, JudgedWeek> _weeks = [];
    private readonly Dictionary<(int Week, string Rule), Verdict> _verdicts = [];

    /// <summary>How many there are, the reviewed one included.</summary>
    public int Count => book.Weeks.Length;

    /// <summary>A week.</summary>
    /// <param name="index">Its place, 0 the first.</param>
    public WeekFacts this[int index] => book.Weeks[index];

    /// <summary>The plan of a week.</summary>
    /// <param name="index">Its place, 0 the first.</param>
    public PlanInForce PlanOf(int index)
    {
        if (index == Count - 1)
            return book.Plan;
        if (!_plans.TryGetValue(index, out var plan))
        {
            var before = new List<WeekHours>();
            for (var earlier = 0; earlier < index; earlier++)
            {
                var facts = book.Weeks[earlier];
                before.Add(new WeekHours(facts.StartsOn, facts.Hours, facts.Exception is not null, earlier == 0 ? facts.FirstRideOn : null));
            }
            _plans[index] = plan = PlanInForce.For(book.Plan.Rider, before, book.Weeks[index].StartsOn, table);
        }
        return plan;
    }

    /// <summary>What a rule says of a week.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="index">The week's place, 0 the first.</param>
    public Verdict VerdictOf(Rule rule, int index)
    {
        if (!_verdicts.TryGetValue((index, rule.Id), out var verdict))
            _verdicts[(index, rule.Id)] = verdict = rule.Decide(Judged(index)).Verdict;
        return verdict;
    }

    private JudgedWeek Judged(int index)
    {
        if (!_weeks.TryGetValue(index, out var week))
            _weeks[index] = week = new JudgedWeek(new WeekUnderReview(book.Weeks[index], new Past(book.Weeks[..index]), PlanOf(index)));
        return week;
    }
}
