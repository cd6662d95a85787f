using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>The heaviest two days in a row are followed by rest.</summary>
internal sealed class RestAfterLoad : Rule
{
    private const int WeeksOfHistory = 4;

    public override string Id => "rest-after-load";

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames => ["heavy_pair_stress", "heavy_pair_week_share", "stress_unknown_share_at_most"];

    protected override Needs Needs => Needs.Rides | Needs.FinishedWeek;

    protected override Basis Basis => Basis.Stress | Basis.Kinds;

    protected override int DaysBefore => 7 * WeeksOfHistory;

    protected override bool UnratedMatters => true;

    public override string Ask(PlanInForce plan) =>
        $"After two days that hold {Say.Points(plan.Limits.HeavyPairStress)} and {Say.Percent(plan.Limits.HeavyPairWeekShare)} of a usual week’s stress, "
        + "one of the next two days is rest or recovery.";

    protected override Call Look(JudgedWeek week)
    {
        var (end, stress) = HeaviestPair(week);
        if (Close.Below(stress, week.Limits.HeavyPairStress) || IsRested(week, end))
            return Call.Kept;
        if (UsualWeek(week) is not { } usual)
            return Call.NotJudged("it needs four weeks before this one");
        return Close.Below(stress, week.Limits.HeavyPairWeekShare * usual) ? Call.Kept : Call.Broken;
    }

    protected override Account Tell(JudgedWeek week, Verdict verdict)
    {
        var (end, stress) = HeaviestPair(week);
        var pair = Pair(week, end);
        var usual = UsualWeek(week);
        var share = usual > 0 ? stress / usual : null;
        var amount = share is { } part ? $"{Say.Points(stress)}, {Say.Percent(part)} of a usual week" : Say.Points(stress);
        if (verdict == Verdict.Kept)
        {
            return Account.Of(!Close.Below(stress, week.Limits.HeavyPairStress) && IsRested(week, end)
                ? $"{pair} were the heaviest two days in a row ({amount}), and rest or recovery followed."
                : $"No two days in a row were heavy enough to ask for rest ({amount} at most).");
        }
        var after = new[] { week.Week.Days[end + 1], week.Week.Days[end + 2] };
        return Account.Of(
            $"{pair} held {amount}, and neither {Say.Day(after[0].Date)} nor {Say.Day(after[1].Date)} was rest or recovery.",
            $"A day off, or a short easy ride, on {Say.Day(after[0].Date)} or {Say.Day(after[1].Date)}.",
            new Occurrence
            {
                Verdict = Verdict.Broken,
                Dates = [week.Week.StartsOn.PlusDays(end - 1), week.Week.StartsOn.PlusDays(end), after[0].Date, after[1].Date],
                Rides = [.. Day(week, end - 1)!.Rides.Concat(Day(week, end)!.Rides).Select(r => r.File)],
                Numbers =
                [
                    Numbered.Of("pair_stress_points", stress, 1),
                    Numbered.Of("usual_week_stress_points", usual, 1),
                    Numbered.Of("share_of_usual_week", share, 3),
                ],
            });
    }

    /// <summary>
    /// The pair that ends between the day before the week and its fifth day with the most stress; of equals the later.
    /// While an event goes on no rest is asked for: it is asked for after the event's last day.
    /// </summary>
    private static (int End, double Stress) HeaviestPair(JudgedWeek week)
    {
        var heaviest = (End: 1, Stress: 0.0);
        for (var end = -1; end <= 4; end++)
        {
            if (week.IsEventDay(end + 1))
                continue;
            if (Day(week, end - 1) is { } first && Day(week, end) is { } second && first.Stress + second.Stress >= heaviest.Stress)
                heaviest = (end, first.Stress + second.Stress);
        }
        return heaviest;
    }

    private static bool IsRested(JudgedWeek week, int end) =>
        week.Week.Days[end + 1].IsRestOrRecovery || week.Week.Days[end + 2].IsRestOrRecovery;

    private static double? UsualWeek(JudgedWeek week)
    {
        if (week.Background.WeeksBefore(WeeksOfHistory) is not { } weeks)
            return null;
        double sum = 0;
        foreach (var before in weeks)
            sum += before.Stress;
        return sum / weeks.Count;
    }

    private static DayFacts? Day(JudgedWeek week, int index) =>
        index >= 0 ? week.Week.Days[index] : week.Background.Past.LastWeek?.Days[7 + index];

    private static string Pair(JudgedWeek week, int end)
    {
        var first = week.Week.StartsOn.PlusDays(end - 1);
        var second = week.Week.StartsOn.PlusDays(end);
        return end < 0
            ? $"{Say.Day(first)} and {Say.Day(second)} before this week"
            : Say.Capital($"{Say.Day(first, week.Week)} and {Say.Day(second)}");
    }
}
