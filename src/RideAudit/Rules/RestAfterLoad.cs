using System.Collections.Immutable;
using NodaTime;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>The heaviest two days in a row are followed by rest.</summary>
internal sealed class RestAfterLoad : Rule<RestAfterLoad.Reading>
{
    private const int WeeksOfHistory = 4;

    public override string Id => "rest-after-load";

    public override string Name => "Rest after load";

    public override string ShortName => "rest-after-load";

    public override string Effect(Finding finding, LocalDate? riddenOn) => "left too little rest after a heavy day";

    public override Standing Standing { get; } = new() { Rank = 20, Group = RuleGroup.HardDays, Protects = true };

    public override bool IsChangeSought => true;

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames => ["heavy_pair_stress", "heavy_pair_week_share", "stress_unknown_share_at_most"];

    protected override Needs Needs => Needs.Rides | Needs.FinishedWeek;

    protected override Basis Basis => Basis.Stress | Basis.Kinds;

    protected override int DaysBefore => 7 * WeeksOfHistory;

    protected override bool UnratedMatters => true;

    public override string Ask(PlanInForce plan) =>
        $"After two days that hold {Shown.Points(plan.Limits.HeavyPairStress)} and {Shown.Share(plan.Limits.HeavyPairWeekShare)} of a usual week’s stress, "
        + "the next day is not hard, and it or the day after it is rest or recovery.";

    protected override Look Read(JudgedWeek week)
    {
        var (end, stress) = HeaviestPair(week);
        var usual = UsualWeek(week);
        var heavy = !Close.Below(stress.To(0), week.Limits.HeavyPairStress);
        var rested = heavy && IsRested(week, end);
        var reading = new Reading(end, stress, usual, rested, week.Week.Days[end + 1].IsHard);
        if (!heavy || rested)
            return As(Verdict.Kept, reading);
        if (usual is not { } mean)
            return NotJudged($"it needs {Shown.Count(WeeksOfHistory, "week")} before this one");
        return As(mean > 0 && Close.Below(AsShown.Percent(stress / mean), 100 * week.Limits.HeavyPairWeekShare) ? Verdict.Kept : Verdict.Broken, reading);
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        var pair = Pair(week, reading.End);
        var amount = reading.ShareOfUsual is { } part ? $"{Shown.Points(reading.Stress)}, {Shown.Share(part)} of a usual week" : Shown.Points(reading.Stress);
        if (verdict == Verdict.Kept)
        {
            return new RuleWords
            {
                Sentence = reading.Rested
                    ? $"{pair} were the heaviest two days in a row ({amount}), and rest or recovery followed."
                    : $"No two days in a row were heavy enough to ask for rest{(reading.Stress > 0 ? $" ({amount} at most)" : "")}.",
                Held = "rest after load",
                Figure = reading.Stress > 0 ? $"{Shown.Points(reading.Stress)} on {ShortPair(week, reading.End)}" : null,
            };
        }
        string first = Shown.Weekday(week.Week.Days[reading.End + 1].Date), second = Shown.Weekday(week.Week.Days[reading.End + 2].Date);
        return new RuleWords
        {
            Sentence = reading.NextIsHard
                ? $"{pair} held {amount}, and {first} was a hard day again."
                : $"{pair} held {amount}, and neither {first} nor {second} was rest or recovery.",
            WouldHaveKept = reading.NextIsHard ? $"A day off, or a short easy ride, on {first}." : $"A day off, or a short easy ride, on {first} or {second}.",
            Advice = "Rest, or ride short and easy, after the two heaviest days.",
            Headline = reading.NextIsHard ? "a hard day right after the two heaviest" : "no rest after the two heaviest days",
            Occurrences = [Describe(reading, week)],
        };
    }

    private static Occurrence Describe(Reading reading, JudgedWeek week) => new()
    {
        Verdict = Verdict.Broken,
        Dates = [.. Enumerable.Range(reading.End - 1, 4).Select(i => week.Week.StartsOn.PlusDays(i))],
        Rides = [.. Day(week, reading.End - 1)!.Rides.Concat(Day(week, reading.End)!.Rides).Select(r => r.File)],
        Numbers =
        [
            NamedNumber.Of("pair_stress_points", reading.Stress, 1, v => $"{Shown.Points(v)} in the two days"),
            NamedNumber.Of("usual_week_stress_points", reading.UsualWeek, 1, v => $"usual week {Shown.Points(v)}"),
            NamedNumber.Of("share_of_usual_week", reading.ShareOfUsual, 3, v => $"{Shown.Share(v, 1)} of it"),
        ],
    };

    /// <summary>
    /// The pair that ends between the day before the week and its fifth day with the most stress; of equals the later.
    /// A pair that ends on a day of rest or recovery has its rest already. While an event goes on no rest is asked for: it is asked for after the event's last day.
    /// </summary>
    private static (int End, double Stress) HeaviestPair(JudgedWeek week)
    {
        var heaviest = (End: 1, Stress: 0.0);
        for (var end = -1; end <= 4; end++)
        {
            if (week.IsEventDay(end + 1))
                continue;
            if (Day(week, end - 1) is { } first && Day(week, end) is { IsRestOrRecovery: false } second && first.Stress + second.Stress >= heaviest.Stress)
                heaviest = (end, first.Stress + second.Stress);
        }
        return heaviest;
    }

    private static bool IsRested(JudgedWeek week, int end) =>
        !week.Week.Days[end + 1].IsHard && (week.Week.Days[end + 1].IsRestOrRecovery || week.Week.Days[end + 2].IsRestOrRecovery);

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
        var (first, second) = (week.Week.StartsOn.PlusDays(end - 1), week.Week.StartsOn.PlusDays(end));
        return end < 0
            ? $"{Shown.Weekday(first)} and {Shown.Weekday(second)} before this week"
            : $"{week.NameOf(first)} and {Shown.Weekday(second)}";
    }

    // With their dates: the two may lie before the week.
    private static string ShortPair(JudgedWeek week, int end) =>
        $"{Shown.ShortDay(week.Week.StartsOn.PlusDays(end - 1))} and {Shown.ShortDay(week.Week.StartsOn.PlusDays(end))}";

    /// <summary>What it reads.</summary>
    /// <param name="End">The second day of the heaviest two in a row, by its place in the week; −1 is the day before.</param>
    /// <param name="Stress">Stress of the two, points.</param>
    /// <param name="UsualWeek">Mean stress of the weeks before, points; null when there are too few.</param>
    /// <param name="Rested">They are heavy, and rest or recovery followed.</param>
    /// <param name="NextIsHard">The day after them is hard.</param>
    internal readonly record struct Reading(int End, double Stress, double? UsualWeek, bool Rested, bool NextIsHard)
    {
        public double? ShareOfUsual => UsualWeek > 0 ? Stress / UsualWeek : null;
    }
}
