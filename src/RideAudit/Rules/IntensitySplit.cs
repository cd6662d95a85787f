using System.Collections.Immutable;
using NodaTime;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>The intended share of easy riding, by time or by session.</summary>
internal sealed class IntensitySplit : Rule<IntensitySplit.Reading>
{
    private static readonly IntensitySplit Own = new();

    public override string Id => "intensity-split";

    public override string Name => "Intensity split";

    public override string Effect(Finding finding, LocalDate? riddenOn) => "moved the intensity split";

    public override Standing Standing { get; } = new() { Rank = 90, Group = RuleGroup.Intensity };

    public override Evidence Evidence => Evidence.PublishedStudy;

    public override string Source =>
        "Seiler 2010, Int J Sports Physiol Perform 5:276 (about 80 % of sessions easy); Stöggl and Sperlich 2014, Front Physiol 5:33; "
        + "Sylta, Tønnessen and Seiler 2014, Int J Sports Physiol Perform 9:100 (why time and sessions differ); "
        + "the shares of time by weekly hours are common practice";

    public override string? SourceInShort => "Common practice; Seiler 2010; Stöggl and Sperlich 2014; Sylta, Tønnessen and Seiler 2014";

    public override ImmutableArray<string> LimitNames =>
        ["intended_low_share", "split_tolerance", "intended_easy_session_share", "split_sessions_at_least"];

    protected override Needs Needs => Needs.Rides | Needs.Tier | Needs.FinishedWeek | Needs.NoEvent | Needs.NoAway;

    protected override Basis Basis => Basis.Kinds;

    public override string Ask(PlanInForce plan)
    {
        var limits = plan.Limits;
        var tolerance = $"no more than {Shown.Points(limits.SplitTolerance * 100)} below that";
        return plan.Rider.Plan.SplitBy == SplitBy.Time
            ? $"About {Shown.Share(limits.IntendedLowShare)} of the time easy, {tolerance}; more is fine."
            : limits.IntendedEasySessionShare is { } share
                ? $"About {Shown.Share(share)} of the sessions easy, {tolerance}; more is fine."
                : "The split by session is not judged at this volume.";
    }

    /// <summary>Whether a week's split is to be watched.</summary>
    public static bool IsWatched(JudgedWeek week) => Own.Decide(week).Verdict == Verdict.Watch;

    protected override Look Read(JudgedWeek week) =>
        week.Plan.Rider.Plan.SplitBy == SplitBy.Time ? ReadByTime(week) : ReadBySession(week);

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        var easier = AsShown.Percent(reading.Share) > AsShown.Percent(reading.Intended) ? ", and easier than that is fine" : "";
        return new RuleWords
        {
            Sentence = $"{Shown.Share(reading.Share)} of the {(reading.ByTime ? "time was" : "sessions were")} easy; the plan intends {Shown.Share(reading.Intended)}{easier}.",
            WouldHaveKept = WouldHave(reading, week),
            Advice = $"Ride about {Shown.Share(reading.Intended)} of the {(reading.ByTime ? "time" : "sessions")} easy.",
            Headline = reading.ByTime ? "too much time above easy" : "too many hard sessions for the easy ones",
            Held = "intensity split",
            Figure = $"{Shown.Share(reading.Share)} easy, {Shown.Share(reading.Intended)} intended",
            Occurrences = verdict == Verdict.Kept ? [] : [Describe(reading, VerdictOf(reading.Share, reading.Intended, week.Limits.SplitTolerance))],
        };
    }

    private static string WouldHave(Reading reading, JudgedWeek week)
    {
        var least = reading.Intended - week.Limits.SplitTolerance;
        if (reading.ByTime)
            return $"{Shown.Length(TooMuch(week.Week, least))} of hard riding ridden easy instead.";
        var (easy, hard, unrated) = SessionsOf(week.Week);
        var missing = (int)Math.Ceiling(least * (easy + hard + unrated) - easy - Close.Hair);
        return $"{Shown.Capital(Shown.Count(Math.Min(missing, hard), "hard session"))} ridden easy instead.";
    }

    private static Occurrence Describe(Reading reading, Verdict verdict) => new()
    {
        Verdict = verdict,
        Numbers =
        [
            reading.ByTime
                ? NamedNumber.Of("low_share", reading.Share, 3, v => $"{Shown.Share(v, 1)} low")
                : NamedNumber.Of("easy_session_share", reading.Share, 3, v => $"{Shown.Share(v, 1)} of sessions easy"),
            NamedNumber.Of("intended_share", reading.Intended, 3, v => $"{Shown.PlainShare(v)} intended"),
        ],
    };

    private static Look ReadByTime(JudgedWeek week)
    {
        var bands = week.Week.Bands;
        var unknown = Unbanded.SecondsIn(week.Week);
        if (bands.LowShare is not { } share)
            return NotJudged("no ride has power or heart rate to rate it");
        var all = bands.Total + unknown;
        var intended = week.Limits.IntendedLowShare;
        return AsGiven(Judge(bands.Low / all, (bands.Low + unknown) / all, intended, week.Limits), new Reading(true, share, intended));
    }

    private static Look ReadBySession(JudgedWeek week)
    {
        if (week.Limits.IntendedEasySessionShare is not { } intended)
            return NotJudged("the split by session is only judged at high and very high volume");
        var (easy, hard, unrated) = SessionsOf(week.Week);
        var all = easy + hard + unrated;
        if (all < week.Limits.SplitSessionsAtLeast)
            return NotJudged($"a split by session needs {Shown.Count(week.Limits.SplitSessionsAtLeast, "ride")}");
        var share = easy + hard > 0 ? (double)easy / (easy + hard) : 0;
        return AsGiven(Judge((double)easy / all, (double)(easy + unrated) / all, intended, week.Limits), new Reading(false, share, intended));
    }

    private static Look AsGiven(Verdict? verdict, Reading reading) => verdict is { } given ? As(given, reading) : Unrated();

    /// <summary>The verdict on a share that lies between two ends; null when it depends on where.</summary>
    private static Verdict? Judge(double least, double most, double intended, Limits limits)
    {
        var atLeast = VerdictOf(least, intended, limits.SplitTolerance);
        return atLeast == VerdictOf(most, intended, limits.SplitTolerance) ? atLeast : null;
    }

    /// <summary>Riding easier than intended is always right: whether a hard session was left out is for the plan to say.</summary>
    private static Verdict VerdictOf(double share, double intended, double tolerance)
    {
        var below = 100 * intended - AsShown.Percent(share);
        return Close.Above(below, 200 * tolerance) ? Verdict.Broken : Close.Above(below, 100 * tolerance) ? Verdict.Watch : Verdict.Kept;
    }

    /// <summary>Riding above low that would have to be easy, s, in whole minutes rounded up.</summary>
    private static double TooMuch(WeekFacts week, double least)
    {
        var missing = least * (week.Bands.Total + Unbanded.SecondsIn(week)) - week.Bands.Low;
        return 60 * Math.Ceiling(Math.Min(Math.Max(0, missing), week.Bands.AboveLow) / 60);
    }

    private static (int Easy, int Hard, int Unrated) SessionsOf(WeekFacts week)
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
        return (easy, hard, unrated);
    }

    /// <summary>What it reads.</summary>
    /// <param name="ByTime">The split is that of the time; else of the sessions.</param>
    /// <param name="Share">Easy share, 0 to 1.</param>
    /// <param name="Intended">Intended easy share, 0 to 1.</param>
    internal readonly record struct Reading(bool ByTime, double Share, double Intended);
}
