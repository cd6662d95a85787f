using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>One long easy ride a week.</summary>
internal sealed class LongRide : Rule<LongRide.Reading>
{
    private const double MostAddedShare = 0.5;
    private const int StepSeconds = 300;

    internal static readonly LongRide Own = new();

    public override string Id => "long-ride";

    public override string Name => "Long ride";

    public override string ShortName => "long-ride";

    public override string Effect(Finding finding, LocalDate? riddenOn) => "left the week without its long ride";

    public override Standing Standing { get; } = new() { Rank = 70, Group = RuleGroup.Endurance, Heads = Trend.LongestRide };

    public override bool IsChangeSought => true;

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames =>
        ["long_ride_h", "long_ride_length_share", "long_enough_low_share", "long_ride_margin", "long_ride_week_share_at_most"];

    protected override Needs Needs =>
        Needs.Rides | Needs.Tier | Needs.FinishedWeek | Needs.NoEvent | Needs.NoLighter | Needs.NoAway | Needs.NotJustBack;

    protected override Basis Basis => Basis.Kinds;

    protected override bool UnratedMatters => true;

    public override string Ask(PlanInForce plan) =>
        $"One ride of about {Shown.Length(plan.Limits.LongRideHours * 3600)}, at least {Shown.Share(plan.Limits.LongEnoughLowShare)} of it easy, "
        + "or two such rides of one day that are together.";

    /// <summary>Whether a week has neither a long ride nor one near it.</summary>
    public static bool IsMissing(JudgedWeek week) => Own.Read(week).Verdict == Verdict.Broken;

    /// <summary>Whether there is a long ride, long and easy enough.</summary>
    public static bool IsKept(JudgedWeek week) => Own.Read(week).Verdict == Verdict.Kept;

    protected override Look Read(JudgedWeek week)
    {
        RideFigures? longest = null, done = null;
        DayFacts? together = null;
        foreach (var day in week.Week.Days)
        {
            foreach (var ride in day.Rides)
            {
                longest = ride.DurationSeconds <= longest?.DurationSeconds ? longest : ride;
                if (IsLong(ride) && !(ride.DurationSeconds <= done?.DurationSeconds))
                    done = ride;
            }
            together = IsLongTogether(day, week.Limits) ? day : together;
        }
        if (longest is null)
            return NotJudged("there was no ride this week");
        if (done is not null || together is not null)
            return As(Verdict.Kept, new Reading(done ?? longest, done is null ? together : null));
        if (LongestRideJump.IsWatched(week))
            return NotJudged("the longest ride is far longer than those before already, and the long ride comes in steps");
        return As(IsNear(longest, week.Limits) ? Verdict.Watch : Verdict.Broken, new Reading(longest, null));
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        var asked = week.Limits.LongRideHours * 3600;
        var (ride, day) = (reading.Ride, Shown.Weekday(reading.Ride.Date));
        if (verdict == Verdict.Kept)
            return Kept(reading, asked) with { Held = LongestRideJump.IsWatched(week) ? null : $"long ride {Shown.Length(reading.Seconds)}", Figure = Shown.Length(reading.Seconds) };
        var isLong = KindOfRide.MeetsLength(ride.DurationSeconds, week.Limits);
        return new RuleWords
        {
            Sentence = isLong
                ? $"{day}’s ride of {Shown.Length(ride.DurationSeconds)} was long enough, but {NotEasy(ride)}."
                : $"The longest ride was {Shown.Length(ride.DurationSeconds)} on {day}; the plan asks for {Shown.Length(asked)}.",
            WouldHaveKept = isLong ? $"The same ride with at least {Shown.Share(week.Limits.LongEnoughLowShare)} of it easy." : Longer(week),
            Advice = LongRideFirst.Asks(week) ? null
                : LongestRideJump.MostSeconds(week) is { } most && most < asked ? $"Build up to a long easy ride of {Shown.Length(asked)} in steps: {Shown.Length(StepSeconds * Math.Floor(most / StepSeconds))} would be the next."
                : $"Ride one long easy ride of {Shown.Length(asked)}{(HasRoom(week) ? "" : " in place of other riding")}.",
            Headline = verdict != Verdict.Watch ? "no long easy ride" : isLong ? "a long ride that was not easy enough" : "a long ride cut a little short",
            Occurrences = [Describe(ride, verdict)],
        };
    }

    private static RuleWords Kept(Reading reading, double asked)
    {
        var seconds = reading.Seconds;
        var plan = AsShown.Minutes(seconds) < AsShown.Minutes(asked) ? $"near enough to the {Shown.Length(asked)} that the plan asks for" : $"the plan asks for {Shown.Length(asked)}";
        return new RuleWords
        {
            Sentence = reading.Together is { } day
                ? $"{Shown.Weekday(day.Date)}’s rides made {Shown.Length(seconds)} together and count as the long ride; {plan}."
                : $"{Shown.Weekday(reading.Ride.Date)}’s ride of {Shown.Length(seconds)} was the long ride; {plan}.",
        };
    }

    /// <summary>The longest ride that lengthening by no more than half would have made the long ride; else a ride of its own.</summary>
    private static string Longer(JudgedWeek week)
    {
        var minutes = AsShown.Minutes(week.Limits.LongRideHours * 3600);
        var room = week.RoomForMoreSeconds;
        foreach (var ride in week.Week.Rides.OrderByDescending(r => r.DurationSeconds))
        {
            var more = minutes - AsShown.Minutes(ride.DurationSeconds);
            var longer = ride.Bands + new BandSeconds(60 * more, 0, 0);
            if (!ride.IsHard && 60 * more <= room && more <= MostAddedShare * minutes / (1 + MostAddedShare) && week.Background.Calendar.MayAskForMore(ride.Date)
                && KindOfRide.IsLongEnough(60 * minutes, longer, week.Limits))
                return $"{Shown.Minutes(more)} more on {NameOf(ride, week)}, all of it easy.";
        }
        return $"One easy ride of {Shown.Length(60 * minutes)}{(HasRoom(week) ? "" : " in place of other riding")}.";
    }

    private static bool HasRoom(JudgedWeek week) => AsShown.Minutes(week.Limits.LongRideHours * 3600) * 60 <= week.RoomForMoreSeconds;

    /// <summary>The ride's day, and its hour where the day has another.</summary>
    private static string NameOf(RideFigures ride, JudgedWeek week) => week.Week.Rides.Count(r => r.Date == ride.Date) == 1
        ? Shown.Weekday(ride.Date)
        : $"{Shown.Weekday(ride.Date)}’s {Shown.Time(ride.StartsAt.TimeOfDay)} ride";

    private static bool IsLong(RideFigures ride) => ride.LongEnough || ride.Kind == RideKind.Long;

    private static bool IsLongTogether(DayFacts day, Limits limits)
    {
        for (var i = 1; i < day.Rides.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (IsMostlyLow(day.Rides[i], limits) && IsMostlyLow(day.Rides[j], limits)
                    && KindOfRide.MeetsLength(day.Rides[i].DurationSeconds + day.Rides[j].DurationSeconds, limits))
                    return true;
            }
        }
        return false;
    }

    private static bool IsMostlyLow(RideFigures ride, Limits limits) =>
        ride.Bands.LowShare is { } low && !Close.Below(AsShown.Percent(low), 100 * limits.LongEnoughLowShare);

    private static bool IsNear(RideFigures ride, Limits limits) =>
        !Close.Below(AsShown.Minutes(ride.DurationSeconds), limits.LongRideHours * 60 * (1 - limits.LongRideMargin));

    private static Occurrence Describe(RideFigures ride, Verdict verdict) => new()
    {
        Verdict = verdict,
        Dates = [ride.Date],
        Rides = [ride.File],
        Numbers =
        [
            NamedNumber.Of("longest_ride_h", ride.DurationSeconds / 3600, 2, v => $"longest ride {Shown.Length(v * 3600)}"),
            NamedNumber.Of("low_share", ride.Bands.LowShare, 3, v => $"{Shown.Share(v, 1)} low"),
        ],
    };

    private static string NotEasy(RideFigures ride) => ride.Bands.LowShare is { } low ? $"only {Shown.Share(low)} of it was easy" : "nothing tells how easy it was";

    /// <summary>What it reads.</summary>
    /// <param name="Ride">The longest long ride; without one the longest ride.</param>
    /// <param name="Together">The day whose rides are the long ride together; null where one ride is, or none.</param>
    internal readonly record struct Reading(RideFigures Ride, DayFacts? Together)
    {
        public double Seconds => Together?.RideSeconds ?? Ride.DurationSeconds;
    }
}
