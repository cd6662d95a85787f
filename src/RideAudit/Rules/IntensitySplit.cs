using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>The intended share of easy riding, by time or by session.</summary>
internal sealed class IntensitySplit : Rule
{
    public override string Id => "intensity-split";

    public override Evidence Evidence => Evidence.PublishedStudy;

    public override string Source =>
        "Seiler 2010, Int J Sports Physiol Perform 5:276 (about 80 % of sessions easy); Stöggl and Sperlich 2014, Front Physiol 5:33; "
        + "Sylta, Tønnessen and Seiler 2014, Int J Sports Physiol Perform 9:100 (why time and sessions differ); "
        + "the shares of time by weekly hours are common practice";

    public override ImmutableArray<string> LimitNames =>
        ["intended_low_share", "split_tolerance", "intended_easy_session_share", "split_sessions_at_least", "high_days_at_most"];

    protected override Needs Needs => Needs.Rides | Needs.Tier | Needs.FinishedWeek | Needs.NoEvent;

    protected override Basis Basis => Basis.Kinds;

    public override string Ask(PlanInForce plan)
    {
        var limits = plan.Limits;
        var tolerance = $"give or take {Say.Decimal(limits.SplitTolerance * 100, 0)} points";
        return plan.Rider.Plan.SplitBy == SplitBy.Time
            ? $"About {Say.Percent(limits.IntendedLowShare)} of the time easy, {tolerance}."
            : limits.IntendedEasySessionShare is { } share
                ? $"About {Say.Percent(share)} of the sessions easy, {tolerance}."
                : "The split by session is not judged at this volume.";
    }

    protected override Call Look(JudgedWeek week) =>
        week.Plan.Rider.Plan.SplitBy == SplitBy.Time ? LookByTime(week) : LookBySession(week);

    protected override Account Tell(JudgedWeek week, Verdict verdict)
    {
        var byTime = week.Plan.Rider.Plan.SplitBy == SplitBy.Time;
        var share = (byTime ? week.Week.Bands.LowShare : SessionsOf(week.Week).Share) ?? 0;
        var intended = (byTime ? week.Limits.IntendedLowShare : week.Limits.IntendedEasySessionShare) ?? 0;
        var counted = byTime ? "of the time" : "of the sessions";
        var sentence = $"{Say.Percent(share)} {counted} was easy; the plan intends {Say.Percent(intended)}.";
        if (verdict == Verdict.Kept)
            return Account.Of(sentence);
        var kept = share > intended
            ? "One of the planned hard rides: easy riding alone crowded them out."
            : byTime
                ? $"{Say.Time(TooMuch(week.Week, intended - week.Limits.SplitTolerance))} of hard riding ridden easy instead."
                : "One hard session fewer, or an easy one more.";
        return Account.Of(sentence, kept, new Occurrence
        {
            Verdict = Judge(share, share, intended, week) is { } own ? own : verdict,
            Numbers = [Numbered.Of(byTime ? "low_share" : "easy_session_share", share, 3), Numbered.Of("intended_share", intended, 3)],
        });
    }

    private static Call LookByTime(JudgedWeek week)
    {
        var bands = week.Week.Bands;
        var unknown = Unbanded.SecondsIn(week.Week);
        if (bands.LowShare is not { } share)
            return Call.NotJudged("no ride has power or heart rate to rate it");
        var all = bands.Total + unknown;
        return CallOf(Judge(bands.Low / all, (bands.Low + unknown) / all, week.Limits.IntendedLowShare, week));
    }

    private static Call LookBySession(JudgedWeek week)
    {
        if (week.Limits.IntendedEasySessionShare is not { } intended)
            return Call.NotJudged("the split by session is only judged at high and very high volume");
        var (easy, hard, unrated, _) = SessionsOf(week.Week);
        var all = easy + hard + unrated;
        if (all < week.Limits.SplitSessionsAtLeast)
            return Call.NotJudged($"a split by session needs {Say.Count(week.Limits.SplitSessionsAtLeast, "ride")}");
        return CallOf(Judge((double)easy / all, (double)(easy + unrated) / all, intended, week));
    }

    private static Call CallOf(Verdict? verdict) => verdict is { } given
        ? new Call(given)
        : Call.NotJudged("riding without power or heart rate to rate it could change the verdict");

    /// <summary>The verdict on a share that lies between two ends; null when it depends on where.</summary>
    private static Verdict? Judge(double least, double most, double intended, JudgedWeek week)
    {
        var tolerance = week.Limits.SplitTolerance;
        var atLeast = VerdictOf(least - intended, tolerance, week);
        var atMost = VerdictOf(most - intended, tolerance, week);
        var sameSide = least >= intended || most <= intended || atLeast == Verdict.Kept;
        return atLeast == atMost && sameSide ? atLeast : null;
    }

    private static Verdict VerdictOf(double above, double tolerance, JudgedWeek week)
    {
        if (above > 0)
        {
            var mayBeEasy = week.Exceptions.Lighter || week.Exceptions.Away || week.Limits.HighDaysAtMost == 0;
            return Close.Above(above, 2 * tolerance) && !mayBeEasy ? Verdict.Watch : Verdict.Kept;
        }
        return Close.Above(-above, 2 * tolerance) ? Verdict.Broken : Close.Above(-above, tolerance) ? Verdict.Watch : Verdict.Kept;
    }

    private static double TooMuch(WeekFacts week, double least) => Math.Max(0, least * week.Bands.Total - week.Bands.Low);

    private static (int Easy, int Hard, int Unrated, double? Share) SessionsOf(WeekFacts week)
    {
        int easy = 0, hard = 0, unrated = 0;
        foreach (var day in week.Days)
        {
            foreach (var ride in day.Rides)
            {
                hard += ride.IsHard ? 1 : 0;
                unrated += ride.Kind == RideKind.Unrated ? 1 : 0;
                easy += !ride.IsHard && ride.Kind is not (RideKind.Unrated or RideKind.None) ? 1 : 0;
            }
        }
        return (easy, hard, unrated, easy + hard > 0 ? (double)easy / (easy + hard) : null);
    }
}
