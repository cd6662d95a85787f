using System.Collections.Immutable;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules;

/// <summary>Easy rides stay easy.</summary>
internal sealed class EasyRidesEasy : Rule<EasyRidesEasy.Reading>
{
    public override string Id => "easy-rides-easy";

    public override string Name => "Easy rides easy";

    public override Standing Standing { get; } = new() { Rank = 110, Group = RuleGroup.Intensity };

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source =>
        "common practice; Seiler, Haugen and Kuffel 2007, Med Sci Sports Exerc 39:1366, found recovery within minutes below the first threshold and slower above it";

    public override ImmutableArray<string> LimitNames => ["easy_watch_share", "easy_broken_share", "easy_least_min"];

    protected override Needs Needs => Needs.Rides;

    protected override Basis Basis => Basis.Kinds;

    public override string Ask(PlanInForce plan) =>
        $"An easy ride of at least {Shown.Length(plan.Limits.EasyLeastMinutes * 60)} spends no more than {Shown.Share(plan.Limits.EasyWatchShare)} of its time above easy.";

    protected override Look Read(JudgedWeek week)
    {
        var (worst, easy, unrated) = (Verdict.Kept, 0, false);
        foreach (var day in week.Week.Days)
        {
            foreach (var ride in day.Rides)
            {
                unrated |= ride.Kind == RideKind.Unrated && IsLongEnough(ride, week.Limits);
                easy += IsEasy(ride, week.Limits) ? 1 : 0;
                var verdict = VerdictOf(ride, week.Limits);
                worst = verdict > worst ? verdict : worst;
            }
        }
        return unrated && worst != Verdict.Broken
            ? NotJudged("a ride without power or heart rate to rate it could change the verdict")
            : As(worst, new Reading(easy));
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        if (verdict == Verdict.Kept)
            return new RuleWords { Sentence = KeptSentence(reading.EasyRides, week.Limits), Held = reading.EasyRides > 0 ? "easy rides easy" : null };
        var found = week.Week.Rides.Where(r => VerdictOf(r, week.Limits) > Verdict.Kept).OrderByDescending(r => r.Bands.AboveLowShare).ToList();
        var worst = found[0];
        var others = found.Count > 1 ? $" {Shown.Capital(Shown.Count(found.Count - 1, "other easy ride"))} went above easy too." : "";
        return new RuleWords
        {
            Sentence = $"{Shown.Weekday(worst.Date)}’s easy ride spent {Shown.Share(worst.Bands.AboveLowShare)} of its time above easy.{others}",
            WouldHaveKept = $"No more than {Shown.Length(week.Limits.EasyWatchShare * worst.Bands.Total)} of it above easy.",
            Advice = "Keep the easy rides easy.",
            Headline = "an easy ride ridden hard",
            Occurrences = [.. found.OrderBy(r => r.StartsAt.ToInstant()).Select(r => Describe(r, week.Limits))],
        };
    }

    private static Occurrence Describe(RideFigures ride, Limits limits) => new()
    {
        Verdict = VerdictOf(ride, limits),
        Dates = [ride.Date],
        Rides = [ride.File],
        Numbers =
        [
            NamedNumber.Of("above_low_share", ride.Bands.AboveLowShare, 3, v => $"{Shown.Share(v, 1)} above low"),
            NamedNumber.Of("above_low_min", ride.Bands.AboveLow / 60, 1, v => $"{Shown.Minutes(v)} above low"),
        ],
    };

    private static string KeptSentence(int easy, Limits limits) => easy == 0
        ? $"No easy ride of {Shown.Length(limits.EasyLeastMinutes * 60)} or more this week."
        : $"{Shown.Capital(Shown.Count(easy, "easy ride"))}, and easy all through.";

    private static Verdict VerdictOf(RideFigures ride, Limits limits)
    {
        if (!IsEasy(ride, limits) || ride.Bands.AboveLowShare is not { } share)
            return Verdict.Kept;
        return Close.Above(share, limits.EasyBrokenShare) ? Verdict.Broken
            : Close.Above(share, limits.EasyWatchShare) ? Verdict.Watch
            : Verdict.Kept;
    }

    private static bool IsEasy(RideFigures ride, Limits limits) =>
        ride.Kind is RideKind.Recovery or RideKind.Endurance && IsLongEnough(ride, limits);

    private static bool IsLongEnough(RideFigures ride, Limits limits) => ride.DurationSeconds >= limits.EasyLeastMinutes * 60;

    /// <summary>What it reads beside the rides themselves.</summary>
    /// <param name="EasyRides">Easy rides long enough to be looked at.</param>
    internal readonly record struct Reading(int EasyRides);
}
