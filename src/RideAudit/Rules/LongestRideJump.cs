using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules;

/// <summary>No single ride far longer than any of the month before it.</summary>
internal sealed class LongestRideJump : Rule<LongestRideJump.Reading>
{
    private const double LongestRideWorthNamingSeconds = 5400;

    private static readonly LongestRideJump Own = new();

    public override string Id => "longest-ride-jump";

    public override string Name => "Longest ride jump";

    public override Standing Standing { get; } = new() { Rank = 130, Group = RuleGroup.Growth };

    public override Evidence Evidence => Evidence.PublishedStudy;

    public override string Source =>
        "a study of runners, not of cyclists: Frandsen et al. 2025, Br J Sports Med 59:1203 (single sessions far longer than the longest of 30 days)";

    public override string? SourceInShort => "Runners: Frandsen et al. 2025";

    public override ImmutableArray<string> LimitNames => ["jump_ratio", "jump_least_min", "jump_days"];

    protected override Needs Needs => Needs.Rides | Needs.NoEvent;

    public override string Ask(PlanInForce plan) =>
        $"No ride of {Shown.Length(plan.Limits.JumpLeastMinutes * 60)} or more is longer than {Shown.Number(plan.Limits.JumpRatio, 1)} times the longest "
        + $"of the {Shown.Count(plan.Limits.JumpDays, "day")} before.";

    /// <summary>Whether a week holds a ride far longer than those before.</summary>
    public static bool IsWatched(JudgedWeek week) => Own.Decide(week).IsWanting;

    /// <summary>The longest that a ride of the week could have been without being far longer than those of the days before it, s; null where too little is known.</summary>
    public static double? MostSeconds(JudgedWeek week) =>
        week.Week.FirstRideOn is { } first && Period.DaysBetween(first, week.Week.EndsOn) >= week.Limits.JumpDays && LongestBefore(week, 6) is > 0 and var before
            ? Math.Max(LeastSeconds(week), 60 * Math.Floor(week.Limits.JumpRatio * before / 60 + Close.Hair))
            : null;

    protected override Look Read(JudgedWeek week)
    {
        var jumps = ImmutableArray<Jump>.Empty;
        string? reason = null;
        for (var day = 0; day < 7; day++)
        {
            foreach (var ride in week.Week.Days[day].Rides)
            {
                if (Close.Below(AsShown.Minutes(ride.DurationSeconds), week.Limits.JumpLeastMinutes))
                    continue;
                var before = LongestBefore(week, day);
                if (WhyUnknown(week, ride, before) is { } why)
                    reason ??= why;
                else if (Close.Above(new Jump(ride, before).Ratio.To(2), week.Limits.JumpRatio))
                    jumps = jumps.Add(new Jump(ride, before));
            }
        }
        return jumps.IsEmpty && reason is not null ? NotJudged(reason) : As(jumps.IsEmpty ? Verdict.Kept : Verdict.Watch, new Reading(jumps));
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        var days = Shown.Count(week.Limits.JumpDays, "day");
        if (verdict == Verdict.Kept)
        {
            return new RuleWords
            {
                Sentence = $"No ride was far longer than the longest of the {days} before it.",
                Held = week.Week.LongestRideSeconds >= LongestRideWorthNamingSeconds ? "longest ride in small steps" : null,
                Figure = LongestBefore(week, 0) is > 0 and var before ? $"{Shown.Length(before)} before" : Shown.Length(week.Week.LongestRideSeconds),
            };
        }
        var longest = reading.Jumps.MaxBy(j => j.Ride.DurationSeconds);
        return new RuleWords
        {
            Sentence = $"{Shown.Weekday(longest.Ride.Date)}’s ride of {Shown.Length(longest.Ride.DurationSeconds)} was {Shown.Number(longest.Ratio, 2)} times "
                + $"the longest of the {days} before ({Shown.Length(longest.BeforeSeconds)}). The study behind this is of runners: a caution, not a finding about cyclists.",
            WouldHaveKept = Steps(reading, week),
            Advice = "Lengthen the longest ride in smaller steps.",
            Headline = "a big jump in the longest ride",
            Occurrences = [.. reading.Jumps.Select(Describe)],
        };
    }

    /// <summary>What each ride could have been at most, the earlier ones being no longer than that either.</summary>
    private static string Steps(Reading reading, JudgedWeek week)
    {
        var most = new List<(Jump Jump, double Seconds)>();
        foreach (var jump in reading.Jumps)
        {
            var shortened = most.ToDictionary(m => m.Jump.Ride, m => m.Seconds);
            var before = LongestBefore(week, Period.DaysBetween(week.Week.StartsOn, jump.Ride.Date), shortened);
            most.Add((jump, Math.Max(LeastSeconds(week), 60 * Math.Floor(week.Limits.JumpRatio * before / 60 + Close.Hair))));
        }
        return most.Count == 1 ? $"A ride of at most {Shown.Length(most[0].Seconds)}."
            : $"Rides of at most {Shown.List(most.Select(m => Shown.Length(m.Seconds)))}, one after the other.";
    }

    /// <summary>The longest that never jumps, s, whole minutes.</summary>
    private static double LeastSeconds(JudgedWeek week) => 60 * (Math.Ceiling(week.Limits.JumpLeastMinutes - Close.Hair) - 1);

    private static Occurrence Describe(Jump jump) => new()
    {
        Verdict = Verdict.Watch,
        Dates = [jump.Ride.Date],
        Rides = [jump.Ride.File],
        Numbers =
        [
            NamedNumber.Of("ride_h", jump.Ride.DurationSeconds / 3600, 2, v => $"ride {Shown.Length(v * 3600)}"),
            NamedNumber.Of("longest_before_h", jump.BeforeSeconds / 3600, 2, v => $"longest before {Shown.Length(v * 3600)}"),
            NamedNumber.Of("jump_ratio", jump.Ratio, 3, v => $"{Shown.Number(v, 2)} times as long"),
        ],
    };

    private static string? WhyUnknown(JudgedWeek week, RideFigures ride, double before)
    {
        var days = Shown.Count(week.Limits.JumpDays, "day");
        if (week.Week.FirstRideOn is not { } first || Period.DaysBetween(first, ride.Date) < week.Limits.JumpDays)
            return $"it needs {days} of history";
        return before > 0 ? null : $"there was no ride in the {days} before to compare with";
    }

    private static double LongestBefore(JudgedWeek week, int day, IReadOnlyDictionary<RideFigures, double>? shortened = null)
    {
        var longest = week.Background.LongestRideWithin(week.Limits.JumpDays - day);
        for (var i = Math.Max(0, day - week.Limits.JumpDays); i < day; i++)
        {
            foreach (var ride in week.Week.Days[i].Rides)
                longest = Math.Max(longest, shortened?.GetValueOrDefault(ride, ride.DurationSeconds) ?? ride.DurationSeconds);
        }
        return longest;
    }

    /// <summary>What it reads.</summary>
    /// <param name="Jumps">Rides far longer than those before, in order.</param>
    internal readonly record struct Reading(ImmutableArray<Jump> Jumps);

    /// <summary>A ride far longer than those before.</summary>
    /// <param name="BeforeSeconds">The longest before it, s.</param>
    internal readonly record struct Jump(RideFigures Ride, double BeforeSeconds)
    {
        public double Ratio => Ride.DurationSeconds / BeforeSeconds;
    }
}
