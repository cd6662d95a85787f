using System.Collections.Immutable;
using NodaTime;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>A long ride before a third hard day.</summary>
internal sealed class LongRideFirst : Rule<LongRideFirst.Reading>
{
    private static readonly LongRideFirst Own = new();

    public override string Id => "long-ride-first";

    public override string Name => "Long ride first";

    public override string ShortName => "long-ride-first";

    public override string Effect(Finding finding, LocalDate? riddenOn) => "put a hard day where the long ride belongs";

    public override Standing Standing { get; } = new() { Rank = 60, Group = RuleGroup.Endurance };

    public override bool IsChangeSought => true;

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames => ["long_ride_first_hard_days", "long_ride_h", "long_ride_margin"];

    protected override Needs Needs => Needs.Rides | Needs.Tier | Needs.FinishedWeek | Needs.NoEvent | Needs.NoLighter | Needs.NoAway | Needs.NotJustBack;

    protected override Basis Basis => Basis.Kinds;

    protected override bool UnratedMatters => true;

    public override string Ask(PlanInForce plan) =>
        $"A week with {Shown.Count(plan.Limits.LongRideFirstHardDays, "hard day")} also has its long ride: it serves the rider more than the last of the hard ones.";

    /// <summary>Whether it asks for the long ride of a week.</summary>
    public static bool Asks(JudgedWeek week) => Own.Decide(week).IsWanting;

    /// <remarks>One hard day fewer would keep the letter of it; what the week lacks is the long ride.</remarks>
    public override bool IsCured(JudgedWeek week) => base.IsCured(week) && !LongRide.IsMissing(week);

    protected override Look Read(JudgedWeek week)
    {
        if (week.SetAside(LongRide.Own.Id) is not null)
            return NotJudged("the long-ride rule is set aside");
        var reading = new Reading(HardDays(week.Week), !LongRide.IsMissing(week));
        return As(reading.HardDays >= week.Limits.LongRideFirstHardDays && !reading.HasLongRide ? Verdict.Broken : Verdict.Kept, reading);
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        var count = Shown.Capital(Shown.Count(reading.HardDays, "hard day"));
        if (verdict == Verdict.Kept)
        {
            return new RuleWords
            {
                Sentence = reading.HasLongRide ? $"{count}, and a long ride or one near it." : $"{count}: the long ride was not crowded out by hard riding.",
                Held = reading.HardDays > 2 && LongRide.IsKept(week) && !LongestRideJump.IsWatched(week) ? "long ride before a third hard day" : null,
                Figure = reading.HasLongRide ? "a long ride" : Shown.Count(reading.HardDays, "hard day"),
            };
        }
        return new RuleWords
        {
            Sentence = $"{count} and no long ride; a long ride in place of one of them serves the rider more.",
            WouldHaveKept = $"A ride of {Shown.Length(week.Limits.LongRideHours * 3600)}, most of it easy, in place of one of the hard rides.",
            Advice = "Ride the long ride in place of one of the hard days.",
            Headline = "no long easy ride",
            Occurrences = [Describe(reading, week.Week)],
        };
    }

    private static Occurrence Describe(Reading reading, WeekFacts week)
    {
        var hard = week.Days.Where(d => d.IsHard).ToArray();
        return new Occurrence
        {
            Verdict = Verdict.Broken,
            Dates = [.. hard.Select(d => d.Date)],
            Rides = [.. hard.SelectMany(d => d.Rides).Where(r => r.IsHard).Select(r => r.File)],
            Numbers =
            [
                NamedNumber.Of("hard_days", reading.HardDays, 0, v => Shown.Tally((int)v, "hard day")),
                NamedNumber.Of("longest_ride_h", week.LongestRideSeconds / 3600, 2, v => $"longest ride {Shown.Length(v * 3600)}"),
            ],
        };
    }

    private static int HardDays(WeekFacts week)
    {
        var count = 0;
        foreach (var day in week.Days)
            count += day.IsHard ? 1 : 0;
        return count;
    }

    /// <summary>What it reads.</summary>
    /// <param name="HardDays">Hard days of the week.</param>
    /// <param name="HasLongRide">Whether there is a long ride, or one near it.</param>
    internal readonly record struct Reading(int HardDays, bool HasLongRide);
}
