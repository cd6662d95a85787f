using System.Collections.Immutable;
using NodaTime;
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

    public override string Effect(Finding finding, LocalDate? riddenOn) => "made an easy ride a harder one";

    public override Standing Standing { get; } = new() { Rank = 120, Group = RuleGroup.Intensity };

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source =>
        "common practice; Seiler, Haugen and Kuffel 2007, Med Sci Sports Exerc 39:1366, found recovery within minutes below the first threshold and slower above it";

    public override string? SourceInShort => "Common practice; Seiler, Haugen and Kuffel 2007";

    public override ImmutableArray<string> LimitNames => ["easy_watch_ratio", "easy_broken_ratio", "easy_watch_min", "easy_broken_min", "threshold_least_share", "easy_least_min"];

    protected override Needs Needs => Needs.Rides;

    protected override Basis Basis => Basis.Kinds;

    public override string Ask(PlanInForce plan) =>
        $"An easy ride of at least {Shown.Length(plan.Limits.EasyLeastMinutes * 60)} has an intensity ratio of no more than {Shown.Number(plan.Limits.EasyWatchRatio, 2)} "
        + $"and no more than {Shown.Minutes(plan.Limits.EasyWatchMinutes)} of sustained work around threshold.";

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
        {
            return new RuleWords
            {
                Sentence = KeptSentence(reading.EasyRides, week.Limits),
                Held = reading.EasyRides > 0 ? "easy rides easy" : null,
                Figure = Hardest(week) is { } ratio ? $"ratio {Shown.Number(ratio, 2)} at most" : Shown.Count(reading.EasyRides, "easy ride"),
            };
        }
        var found = week.Week.Rides.Where(r => VerdictOf(r, week.Limits) > Verdict.Kept).OrderByDescending(r => VerdictOf(r, week.Limits)).ThenByDescending(r => r.IntensityRatio).ToList();
        var worst = found[0];
        var others = found.Count > 1 ? $" {Shown.Capital(Shown.Count(found.Count - 1, "other easy ride"))} went too hard as well." : "";
        return new RuleWords
        {
            Sentence = $"{Shown.Weekday(worst.Date)}’s {NameOf(worst)} {What(worst, week.Limits)}.{others}",
            WouldHaveKept = HeldBack(found, week.Limits),
            Advice = "Keep the easy rides easy.",
            Headline = "an easy ride ridden hard",
            Occurrences = [.. found.OrderBy(r => r.StartsAt.ToInstant()).Select(r => Describe(r, week.Limits))],
        };
    }

    private static double? Hardest(JudgedWeek week) => week.Week.Rides.Where(r => IsEasy(r, week.Limits)).Max(r => r.IntensityRatio);

    private static Occurrence Describe(RideFigures ride, Limits limits) => new()
    {
        Verdict = VerdictOf(ride, limits),
        Dates = [ride.Date],
        Rides = [ride.File],
        Numbers =
        [
            NamedNumber.Of("intensity_ratio", ride.IntensityRatio, 3, v => $"intensity ratio {Shown.Number(v, 2)}"),
            NamedNumber.Of("around_threshold_min", ride.AtThresholdShare?.SustainedSeconds / 60, 1, v => $"{Shown.Minutes(v)} around threshold"),
        ],
    };

    private static string KeptSentence(int easy, Limits limits) => easy == 0
        ? $"No easy ride of {Shown.Length(limits.EasyLeastMinutes * 60)} or more this week."
        : easy == 1 ? "The one easy ride was ridden easy." : $"{Shown.Capital(Shown.Count(easy, "easy ride"))}, all ridden easy.";

    private static string HeldBack(List<RideFigures> found, Limits limits)
    {
        var rides = found.Count == 1 ? "The same ride" : "The same rides";
        var minutes = Math.Floor(found.Min(r => WatchMinutes(r, limits)) + Close.Hair);
        return $"{rides} held back on the climbs and into the wind: an intensity ratio of {Shown.Number(limits.EasyWatchRatio, 2)} at most"
            + $"{(minutes > 0 ? $", and no more than {Shown.Minutes(minutes)} around threshold" : ", and nothing around threshold")}.";
    }

    private static string NameOf(RideFigures ride) => ride.Kind == RideKind.Long ? "long ride" : "easy ride";

    private static string What(RideFigures ride, Limits limits)
    {
        var worked = Minutes(ride) is var minutes && Close.Above(minutes, WatchMinutes(ride, limits)) ? $"held {Shown.Minutes(minutes)} of sustained work around threshold" : null;
        var ratio = Close.Above(Percent(ride), 100 * limits.EasyWatchRatio) ? $"was ridden at an intensity ratio of {Shown.Number(ride.IntensityRatio, 2)}, which is not easy" : null;
        return worked is null ? ratio! : ratio is null ? worked : $"{worked} and {ratio}";
    }

    private static Verdict VerdictOf(RideFigures ride, Limits limits)
    {
        if (!IsEasy(ride, limits))
            return Verdict.Kept;
        var (percent, minutes) = (Percent(ride), Minutes(ride));
        return Close.Above(percent, 100 * limits.EasyBrokenRatio) || Close.Above(minutes, BrokenMinutes(ride, limits)) ? Verdict.Broken
            : Close.Above(percent, 100 * limits.EasyWatchRatio) || Close.Above(minutes, WatchMinutes(ride, limits)) ? Verdict.Watch
            : Verdict.Kept;
    }

    /// <summary>A long ride may hold more minutes around threshold than a short one: from the length on at which the most allowed is the share that makes a threshold ride, they grow with it.</summary>
    private static double Growth(RideFigures ride, Limits limits) =>
        limits.EasyBrokenMinutes > 0 ? Math.Max(1, limits.ThresholdLeastShare * AsShown.Minutes(ride.DurationSeconds) / limits.EasyBrokenMinutes) : 1;

    private static double BrokenMinutes(RideFigures ride, Limits limits) => Growth(ride, limits) * limits.EasyBrokenMinutes;

    /// <summary>A long ride with a little more work in it would be a threshold ride that is long enough, and in order: one with a little less is no worse.</summary>
    private static double WatchMinutes(RideFigures ride, Limits limits) =>
        ride.Kind == RideKind.Long ? BrokenMinutes(ride, limits) : Growth(ride, limits) * limits.EasyWatchMinutes;

    private static double Percent(RideFigures ride) => AsShown.Percent(ride.IntensityRatio ?? 0);

    private static double Minutes(RideFigures ride) => AsShown.Minutes(ride.AtThresholdShare?.SustainedSeconds ?? 0);

    private static bool IsEasy(RideFigures ride, Limits limits) =>
        ride.Kind is RideKind.Recovery or RideKind.Endurance or RideKind.Long && IsLongEnough(ride, limits);

    private static bool IsLongEnough(RideFigures ride, Limits limits) => !Close.Below(AsShown.Minutes(ride.DurationSeconds), limits.EasyLeastMinutes);

    /// <summary>What it reads beside the rides themselves.</summary>
    /// <param name="EasyRides">Easy rides long enough to be looked at.</param>
    internal readonly record struct Reading(int EasyRides);
}
