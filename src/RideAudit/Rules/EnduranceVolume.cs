using System.Collections.Immutable;
using NodaTime;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules;

/// <summary>Enough easy hours, counted in hours and not in shares.</summary>
internal sealed class EnduranceVolume : Rule<EnduranceVolume.Reading>
{
    public override string Id => "endurance-volume";

    public override string Name => "Endurance volume";

    public override string Effect(Finding finding, LocalDate? riddenOn) => "took from its easy hours";

    public override Standing Standing { get; } = new() { Rank = 80, Group = RuleGroup.Endurance };

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames => ["intended_low_share", "endurance_margin", "lighter_week_factor"];

    protected override Needs Needs => Needs.Rides | Needs.Tier | Needs.FinishedWeek | Needs.NoEvent | Needs.NoAway | Needs.NotJustBack;

    protected override Basis Basis => Basis.Kinds;

    public override string Ask(PlanInForce plan) => (plan.AskedHours ?? plan.PlannedHours) is { } hours
        ? $"About {Shown.Hours(plan.Limits.IntendedLowShare * hours)} of easy riding, and not less than {Shown.Hours(Least(plan.Limits, hours))}."
        : "As many easy hours as the planned hours and the intended low share make.";

    protected override Look Read(JudgedWeek week)
    {
        if (week.PlannedHours is not { } planned)
            return NotJudged("no hours are planned");
        var reading = new Reading(
            week.Week.Bands.Low / 3600, Unbanded.SecondsIn(week.Week), planned, week.Limits.IntendedLowShare * planned, Least(week.Limits, planned));
        if (reading.MissingMinutes <= 0)
            return As(Verdict.Kept, reading);
        if (reading.MissingMinutes <= AsShown.Minutes(reading.UnknownSeconds))
            return Unrated();
        return CanBeAdded(reading, week) || CanBeEased(reading, week) ? As(Verdict.Broken, reading)
            : NotJudged("the plan asks for more than the hours of the weeks before should grow to");
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        var known = reading.UnknownSeconds > 0
            ? $"{Shown.Hours(reading.Low)} of riding known to be easy, and {Shown.Length(reading.UnknownSeconds)} that nothing could rate"
            : $"{Shown.Hours(reading.Low)} of easy riding";
        return new RuleWords
        {
            Sentence = $"{known}; {Shown.Share(week.Limits.IntendedLowShare)} of {Shown.Hours(reading.Planned)} planned is {Shown.Hours(reading.Asked)}.",
            WouldHaveKept = CanBeAdded(reading, week) ? $"At least {Shown.Length(reading.MissingMinutes * 60)} more of easy riding."
                : $"At least {Shown.Length(reading.MissingMinutes * 60)} of hard riding ridden easy instead.",
            Advice = $"{(CanBeAdded(reading, week) ? "Ride the easy hours" : "Ride more of the hours easy")}: {Shown.Number(reading.Low, 1)} of {Shown.Hours(reading.Asked)}.",
            Headline = "too few easy hours",
            Held = $"{Shown.Number(reading.Low, 1)} easy hours",
            Figure = $"{Shown.Hours(reading.Low)} easy",
            Occurrences = verdict == Verdict.Kept ? [] : [Describe(reading)],
        };
    }

    private static bool CanBeAdded(Reading reading, JudgedWeek week) => 60 * reading.MissingMinutes <= week.RoomForMoreSeconds;

    private static bool CanBeEased(Reading reading, JudgedWeek week) => 60 * reading.MissingMinutes <= week.Week.Bands.AboveLow;

    private static Occurrence Describe(Reading reading) => new()
    {
        Verdict = Verdict.Broken,
        Numbers =
        [
            NamedNumber.Of("low_hours", reading.Low, 2, v => $"{Shown.Hours(v)} low"),
            NamedNumber.Of("asked_low_hours", reading.Asked, 2, v => $"{Shown.Hours(v)} asked"),
            NamedNumber.Of("least_low_hours", reading.Least, 2, v => $"{Shown.Hours(v)} would do"),
        ],
    };

    private static double Least(Limits limits, double plannedHours) => limits.IntendedLowShare * plannedHours * (1 - limits.EnduranceMargin);

    /// <summary>What it reads, h unless the name says otherwise.</summary>
    /// <param name="Low">Ridden in the low band.</param>
    /// <param name="UnknownSeconds">Ridden without a band, s.</param>
    /// <param name="Planned">Planned in all.</param>
    /// <param name="Asked">Asked of the low band.</param>
    /// <param name="Least">What would do.</param>
    internal readonly record struct Reading(double Low, double UnknownSeconds, double Planned, double Asked, double Least)
    {
        /// <summary>Easy riding that is missing, min, whole; 0 or less where there is enough.</summary>
        public double MissingMinutes => AsShown.Minutes(Least * 3600) - AsShown.Minutes(Low * 3600);
    }
}
