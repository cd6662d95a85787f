using System.Collections.Immutable;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>No two hard days next to each other.</summary>
internal sealed class HardDaySpacing : Rule
{
    public override string Id => "hard-day-spacing";

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source =>
        "common practice; Stanley, Peake and Buchheit 2013, Sports Med 43:1259, put the heart’s full recovery from high intensity at 48 h or more "
        + "(from memory); Seiler, Haugen and Kuffel 2007, Med Sci Sports Exerc 39:1366, followed it for 4 h only and give no such figure";

    public override ImmutableArray<string> LimitNames => ["high_min", "high_bouts", "threshold_min"];

    protected override Needs Needs => Needs.Rides | Needs.NoEvent;

    protected override Basis Basis => Basis.Kinds;

    protected override int DaysBefore => 1;

    protected override bool UnratedMatters => true;

    public override string Ask(PlanInForce plan) =>
        "At least one easier day lies between two high days, and better also between a high and a threshold day.";

    protected override Call Look(JudgedWeek week)
    {
        var worst = Verdict.Kept;
        for (var i = 0; i < 7; i++)
        {
            var verdict = Pair(week.Day(i - 1), week.Week.Days[i]);
            worst = verdict > worst ? verdict : worst;
        }
        return new Call(worst);
    }

    protected override Account Tell(JudgedWeek week, Verdict verdict)
    {
        var found = new List<(DayFacts First, DayFacts Second, Verdict Verdict)>();
        for (var i = 0; i < 7; i++)
        {
            if (week.Day(i - 1) is { } first && Pair(first, week.Week.Days[i]) is var pair and > Verdict.Kept)
                found.Add((first, week.Week.Days[i], pair));
        }
        if (found.Count == 0)
            return Account.Of(KeptSentence(week));
        var worst = found.MaxBy(f => f.Verdict);
        var more = found.Count > 1 ? $" It happened {(found.Count == 2 ? "twice" : Say.Number(found.Count) + " times")}." : "";
        return Account.Of(
            $"{PairSentence(worst.First, worst.Second, week.Week)}{more}",
            "An easier or free day between the two.",
            [.. found.Select(f => Describe(f.First, f.Second, f.Verdict))]);
    }

    private static Verdict Pair(DayFacts? first, DayFacts second)
    {
        if (first is not { IsHard: true } || !second.IsHard)
            return Verdict.Kept;
        return first.Kind == DayKind.High && second.Kind == DayKind.High ? Verdict.Broken : Verdict.Watch;
    }

    private static string KeptSentence(JudgedWeek week)
    {
        var hard = week.Week.Days.Count(d => d.IsHard);
        return hard < 2 && week.DayBefore is not { IsHard: true }
            ? $"{Say.Capital(Say.Count(hard, "hard day"))}, so nothing to space."
            : $"No two hard days stood next to each other ({Say.Count(hard, "hard day")} this week).";
    }

    private static string PairSentence(DayFacts first, DayFacts second, WeekFacts week)
    {
        var kinds = (first.Kind, second.Kind) switch
        {
            (DayKind.High, DayKind.High) => "were both high days",
            (DayKind.Threshold, DayKind.Threshold) => "were both threshold days",
            (DayKind.High, _) => "were a high and a threshold day",
            _ => "were a threshold and a high day",
        };
        var names = Say.Capital($"{Say.Day(first.Date, week)} and {Say.Day(second.Date)}");
        return HoursBetween(first, second) is { } hours
            ? $"{names} {kinds} with no easier day between, {Say.Decimal(hours, 0)} h from the end of one hard ride to the start of the next."
            : $"{names} {kinds} with no easier day between.";
    }

    private static Occurrence Describe(DayFacts first, DayFacts second, Verdict verdict) => new()
    {
        Verdict = verdict,
        Dates = [first.Date, second.Date],
        Rides = [.. first.Rides.Concat(second.Rides).Where(r => r.IsHard).Select(r => r.File)],
        Numbers = [Numbered.Of("hours_between", HoursBetween(first, second), 1)],
    };

    private static double? HoursBetween(DayFacts first, DayFacts second)
    {
        RideFigures? earlier = null;
        foreach (var ride in first.Rides)
            earlier = ride.IsHard ? ride : earlier;
        foreach (var ride in second.Rides)
        {
            if (ride.IsHard && earlier is not null)
                return (ride.StartsAt.ToInstant() - earlier.EndsAt.ToInstant()).TotalHours;
        }
        return null;
    }
}
