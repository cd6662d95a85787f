using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>No two hard days next to each other.</summary>
internal sealed class HardDaySpacing : Rule<HardDaySpacing.Reading>
{
    public override string Id => "hard-day-spacing";

    public override string Name => "Hard day spacing";

    public override string ShortName => "spacing";

    public override string Effect(Finding finding, LocalDate? riddenOn)
    {
        var areNeighbours = finding.Occurrences.Any(o =>
            o.Dates is [var first, .., var last] && Period.DaysBetween(first, last) == 1 && (riddenOn is not { } day || o.Dates.Contains(day)));
        return areNeighbours ? "put two hard days next to each other" : "put hard days too close together";
    }

    public override Standing Standing { get; } = new() { Rank = 30, Group = RuleGroup.HardDays, Protects = true };

    public override bool IsChangeSought => true;

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source =>
        "common practice; Stanley, Peake and Buchheit 2013, Sports Med 43:1259, put the heart’s full recovery from high intensity at 48 h or more "
        + "(from memory); Seiler, Haugen and Kuffel 2007, Med Sci Sports Exerc 39:1366, followed it for 4 h only and give no such figure";

    public override string? SourceInShort => "Common practice; Stanley, Peake and Buchheit 2013; Seiler, Haugen and Kuffel 2007 (from memory)";

    public override ImmutableArray<string> LimitNames => ["high_min", "bouts_at_least", "threshold_min", "near_threshold_share_percent", "near_threshold_min"];

    protected override Needs Needs => Needs.Rides | Needs.NoEvent;

    protected override Basis Basis => Basis.Kinds;

    protected override int DaysBefore => 1;

    protected override bool UnratedMatters => true;

    public override string Ask(PlanInForce plan) =>
        $"At least one easier day lies between two high days, and between two threshold days with {Shown.Minutes(plan.Limits.NearThresholdMinutes)} "
        + "close to threshold; better also between a high and a threshold day.";

    protected override Look Read(JudgedWeek week)
    {
        var (worst, hard) = (Verdict.Kept, 0);
        var pairs = ImmutableArray<Pair>.Empty;
        for (var i = 0; i < 7; i++)
        {
            var second = week.Week.Days[i];
            hard += second.IsHard ? 1 : 0;
            if (week.Day(i - 1) is not { } first || VerdictOf(first, second, week.Limits) is var verdict && verdict == Verdict.Kept)
                continue;
            pairs = pairs.Add(new Pair(first, second, verdict));
            worst = verdict > worst ? verdict : worst;
        }
        return As(worst, new Reading(pairs, hard));
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        if (verdict == Verdict.Kept)
        {
            return new RuleWords
            {
                Sentence = KeptSentence(reading.HardDays, week),
                Held = reading.HardDays > 1 ? "hard days spaced" : null,
                Figure = Shown.Count(reading.HardDays, "hard day") + (reading.HardDays > 1 ? ", apart" : ""),
            };
        }
        var worst = reading.Pairs.OrderByDescending(p => p.Verdict).ThenBy(p => p.HoursBetween).First();
        var more = reading.Pairs.Length > 1 ? $" It happened {Shown.Often(reading.Pairs.Length)}." : "";
        return new RuleWords
        {
            Sentence = $"{PairSentence(worst, week)}{more}",
            WouldHaveKept = $"{Shown.List(ToEase(week).Select(Shown.Weekday))} ridden easy.",
            Advice = reading.Pairs.Length > 1 ? "Put an easier day between hard days."
                : $"Put an easier day between {Shown.Weekday(worst.First.Date)}’s and {Shown.Weekday(worst.Second.Date)}’s hard rides.",
            Headline = worst.HoursBetween is { } hours ? $"two hard rides {Shown.Hours(hours, 0)} apart" : "hard days back to back",
            Occurrences = [.. reading.Pairs.Select(Describe)],
        };
    }

    /// <summary>From each hard ride's end to the next one's start, the last hard ride of the week before included when it lies on its last day.</summary>
    protected override IEnumerable<HardSpan> SpansOf(Reading reading, JudgedWeek week, Verdict verdict)
    {
        var before = week.DayBefore is { } last && last.Date == week.Week.StartsOn.PlusDays(-1) ? last.Rides.Where(r => r.IsHard) : [];
        var hard = before.Concat(week.Week.Rides.Where(r => r.IsHard)).OrderBy(r => r.StartsAt.ToInstant()).ToArray();
        for (var i = 1; i < hard.Length; i++)
            yield return new HardSpan(hard[i - 1], hard[i], verdict == Verdict.NotJudged ? verdict : reading.VerdictOf(hard[i - 1], hard[i]));
    }

    /// <summary>Days of the week that leave no two hard days next to each other when they are ridden easy.</summary>
    private static IEnumerable<LocalDate> ToEase(JudgedWeek week)
    {
        var before = week.DayBefore;
        foreach (var day in week.Week.Days)
        {
            var tooClose = before is not null && VerdictOf(before, day, week.Limits) != Verdict.Kept;
            if (tooClose)
                yield return day.Date;
            before = tooClose ? null : day;
        }
    }

    private static Verdict VerdictOf(DayFacts first, DayFacts second, Limits limits)
    {
        if (!first.IsHard || !second.IsHard)
            return Verdict.Kept;
        var high = (first.Kind == DayKind.High ? 1 : 0) + (second.Kind == DayKind.High ? 1 : 0);
        return high == 2 || (high == 0 && IsMuchNearThreshold(first, second, limits)) ? Verdict.Broken : Verdict.Watch;
    }

    private static bool IsMuchNearThreshold(DayFacts first, DayFacts second, Limits limits) =>
        !Close.Below(AsShown.Minutes(NearThreshold(first) + NearThreshold(second)), limits.NearThresholdMinutes);

    private static double NearThreshold(DayFacts day)
    {
        double seconds = 0;
        foreach (var ride in day.Rides)
            seconds += ride.NearThreshold?.SustainedSeconds ?? 0;
        return seconds;
    }

    private static string KeptSentence(int hard, JudgedWeek week) => hard < 2 && week.DayBefore is not { IsHard: true }
        ? $"{Shown.Capital(Shown.Count(hard, "hard day"))}, so nothing to space."
        : $"No two hard days stood next to each other ({Shown.Count(hard, "hard day")} this week).";

    private static string PairSentence(Pair pair, JudgedWeek week)
    {
        var kinds = (pair.First.Kind, pair.Second.Kind) switch
        {
            (DayKind.High, DayKind.High) => "were both high days",
            (DayKind.Threshold, DayKind.Threshold) => "were both threshold days",
            (DayKind.High, _) => "were a high and a threshold day",
            _ => "were a threshold and a high day",
        };
        var names = $"{week.NameOf(pair.First.Date)} and {Shown.Weekday(pair.Second.Date)}";
        var apart = pair.HoursBetween is { } hours ? $", {Shown.Hours(hours, 0)} from the end of one hard ride to the start of the next" : "";
        var near = pair is { Verdict: Verdict.Broken, First.Kind: DayKind.Threshold }
            ? $", with {Shown.Length(NearThreshold(pair.First) + NearThreshold(pair.Second))} close to threshold between them" : "";
        return $"{names} {kinds} with no easier day between{apart}{near}.";
    }

    private static Occurrence Describe(Pair pair) => new()
    {
        Verdict = pair.Verdict,
        Dates = [pair.First.Date, pair.Second.Date],
        Rides = [.. pair.HardRides.Select(r => r.File)],
        Numbers =
        [
            NamedNumber.Of("hours_between", pair.HoursBetween, 1, v => $"{Shown.Hours(v)} between"),
            .. pair is { Verdict: Verdict.Broken, First.Kind: DayKind.Threshold }
                ? [NamedNumber.Of("near_threshold_min", (NearThreshold(pair.First) + NearThreshold(pair.Second)) / 60, 1, v => $"{Shown.Minutes(v)} close to threshold")]
                : Array.Empty<NamedNumber>(),
        ],
    };

    /// <summary>What it reads.</summary>
    /// <param name="Pairs">Hard days next to each other, in order.</param>
    /// <param name="HardDays">Hard days of the week.</param>
    internal readonly record struct Reading(ImmutableArray<Pair> Pairs, int HardDays)
    {
        public Verdict VerdictOf(RideFigures earlier, RideFigures later) =>
            Pairs.Where(p => p.HardRides.Contains(earlier) && p.HardRides.Contains(later)).Select(p => p.Verdict).DefaultIfEmpty(Verdict.Kept).Max();
    }

    /// <summary>Two hard days next to each other.</summary>
    /// <param name="First">The earlier; it may be the day before the week.</param>
    /// <param name="Second">The later.</param>
    /// <param name="Verdict">What the rule says of the two.</param>
    internal readonly record struct Pair(DayFacts First, DayFacts Second, Verdict Verdict)
    {
        public IEnumerable<RideFigures> HardRides => First.Rides.Concat(Second.Rides).Where(r => r.IsHard);

        /// <summary>From the end of the first day's last hard ride to the start of the second day's first.</summary>
        public double? HoursBetween => First.Rides.LastOrDefault(r => r.IsHard) is { } earlier && Second.Rides.FirstOrDefault(r => r.IsHard) is { } later
            ? (later.StartsAt.ToInstant() - earlier.EndsAt.ToInstant()).TotalHours
            : null;
    }
}
