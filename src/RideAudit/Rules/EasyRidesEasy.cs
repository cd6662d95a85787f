using System.Collections.Immutable;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>Easy rides stay easy.</summary>
internal sealed class EasyRidesEasy : Rule
{
    public override string Id => "easy-rides-easy";

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source =>
        "common practice; Seiler, Haugen and Kuffel 2007, Med Sci Sports Exerc 39:1366, found recovery within minutes below the first threshold and slower above it";

    public override ImmutableArray<string> LimitNames => ["easy_watch_share", "easy_broken_share", "easy_least_min"];

    protected override Needs Needs => Needs.Rides;

    protected override Basis Basis => Basis.Kinds;

    public override string Ask(PlanInForce plan) =>
        $"An easy ride of at least {Say.Time(plan.Limits.EasyLeastMinutes * 60)} spends no more than {Say.Percent(plan.Limits.EasyWatchShare)} of its time above easy.";

    protected override Call Look(JudgedWeek week)
    {
        var worst = Verdict.Kept;
        var unrated = false;
        foreach (var day in week.Week.Days)
        {
            foreach (var ride in day.Rides)
            {
                unrated |= ride.Kind == RideKind.Unrated && IsLongEnough(ride, week.Limits);
                var verdict = VerdictOf(ride, week.Limits);
                worst = verdict > worst ? verdict : worst;
            }
        }
        return unrated && worst != Verdict.Broken
            ? Call.NotJudged("a ride without power or heart rate to rate it could change the verdict")
            : new Call(worst);
    }

    protected override Account Tell(JudgedWeek week, Verdict verdict)
    {
        var found = week.Week.Rides.Where(r => VerdictOf(r, week.Limits) > Verdict.Kept).OrderByDescending(r => r.Bands.AboveLowShare).ToList();
        if (found.Count == 0)
            return Account.Of(KeptSentence(week.Week, week.Limits));
        var worst = found[0];
        var others = found.Count > 1 ? $" {Say.Capital(Say.Count(found.Count - 1, "other easy ride"))} went above easy too." : "";
        return Account.Of(
            $"{Say.Day(worst.Date)}’s easy ride spent {Say.Percent(worst.Bands.AboveLowShare ?? 0)} of its time above easy.{others}",
            $"No more than {Say.Time(week.Limits.EasyWatchShare * worst.Bands.Total)} of it above easy.",
            [.. found.OrderBy(r => r.StartsAt.ToInstant()).Select(r => Describe(r, week.Limits))]);
    }

    private static Occurrence Describe(RideFigures ride, Limits limits) => new()
    {
        Verdict = VerdictOf(ride, limits),
        Dates = [ride.Date],
        Rides = [ride.File],
        Numbers = [Numbered.Of("above_low_share", ride.Bands.AboveLowShare, 3), Numbered.Of("above_low_min", ride.Bands.AboveLow / 60, 1)],
    };

    private static string KeptSentence(WeekFacts week, Limits limits)
    {
        var easy = week.Rides.Count(r => IsEasy(r, limits));
        return easy == 0
            ? $"No easy ride of {Say.Time(limits.EasyLeastMinutes * 60)} or more this week."
            : $"{Say.Capital(Say.Count(easy, "easy ride"))}, and easy all through.";
    }

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
}
