using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules;

/// <summary>No single ride far longer than any of the month before it.</summary>
internal sealed class LongestRideJump : Rule
{
    public override string Id => "longest-ride-jump";

    public override Evidence Evidence => Evidence.PublishedStudy;

    public override string Source =>
        "a study of runners, not of cyclists: Frandsen et al. 2025, Br J Sports Med 59:1203 (single sessions far longer than the longest of 30 days)";

    public override ImmutableArray<string> LimitNames => ["jump_ratio", "jump_least_min", "jump_days"];

    protected override Needs Needs => Needs.Rides | Needs.NoEvent;

    public override string Ask(PlanInForce plan) =>
        $"No ride of {Say.Time(plan.Limits.JumpLeastMinutes * 60)} or more is longer than {Say.Decimal(plan.Limits.JumpRatio)} times the longest "
        + $"of the {Say.Number(plan.Limits.JumpDays)} days before.";

    protected override Call Look(JudgedWeek week)
    {
        var verdict = Verdict.Kept;
        string? reason = null;
        for (var day = 0; day < 7; day++)
        {
            foreach (var ride in week.Week.Days[day].Rides)
            {
                if (Close.Below(ride.DurationSeconds, week.Limits.JumpLeastMinutes * 60))
                    continue;
                if (WhyUnknown(week, day, ride) is { } why)
                    reason ??= why;
                else if (IsJump(week, day, ride))
                    verdict = Verdict.Watch;
            }
        }
        return verdict == Verdict.Kept && reason is not null ? Call.NotJudged(reason) : new Call(verdict);
    }

    protected override Account Tell(JudgedWeek week, Verdict verdict)
    {
        var jumps = new List<(RideFigures Ride, double Before)>();
        for (var day = 0; day < 7; day++)
        {
            foreach (var ride in week.Week.Days[day].Rides)
            {
                if (!Close.Below(ride.DurationSeconds, week.Limits.JumpLeastMinutes * 60) && WhyUnknown(week, day, ride) is null && IsJump(week, day, ride))
                    jumps.Add((ride, LongestBefore(week, day)));
            }
        }
        var days = Say.Number(week.Limits.JumpDays);
        if (jumps.Count == 0)
            return Account.Of($"No ride was far longer than the longest of the {days} days before it.");
        var (longest, before) = jumps.MaxBy(j => j.Ride.DurationSeconds);
        return Account.Of(
            $"{Say.Day(longest.Date)}’s ride of {Say.Time(longest.DurationSeconds)} was {Say.Decimal(longest.DurationSeconds / before, 2)} times "
            + $"the longest of the {days} days before ({Say.Time(before)}). The study behind this is of runners: a caution, not a finding about cyclists.",
            $"A ride of at most {Say.Time(week.Limits.JumpRatio * before)}.",
            [.. jumps.Select(j => Describe(j.Ride, j.Before))]);
    }

    private static Occurrence Describe(RideFigures ride, double before) => new()
    {
        Verdict = Verdict.Watch,
        Dates = [ride.Date],
        Rides = [ride.File],
        Numbers =
        [
            Numbered.Of("ride_h", ride.DurationSeconds / 3600, 2),
            Numbered.Of("longest_before_h", before / 3600, 2),
            Numbered.Of("jump_ratio", ride.DurationSeconds / before, 3),
        ],
    };

    private static string? WhyUnknown(JudgedWeek week, int day, RideFigures ride)
    {
        var days = week.Limits.JumpDays;
        if (week.Week.FirstRideOn is not { } first || Period.DaysBetween(first, ride.Date) < days)
            return $"it needs {Say.Number(days)} days of history";
        return LongestBefore(week, day) > 0 ? null : $"there was no ride in the {Say.Number(days)} days before to compare with";
    }

    private static bool IsJump(JudgedWeek week, int day, RideFigures ride) =>
        Close.Above(ride.DurationSeconds, week.Limits.JumpRatio * LongestBefore(week, day));

    private static double LongestBefore(JudgedWeek week, int day)
    {
        var longest = week.Background.LongestRideWithin(week.Limits.JumpDays - day);
        for (var i = Math.Max(0, day - week.Limits.JumpDays); i < day; i++)
        {
            foreach (var ride in week.Week.Days[i].Rides)
                longest = Math.Max(longest, ride.DurationSeconds);
        }
        return longest;
    }
}
