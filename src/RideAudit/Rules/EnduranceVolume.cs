using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules;

/// <summary>Enough easy hours, counted in hours and not in shares.</summary>
internal sealed class EnduranceVolume : Rule
{
    public override string Id => "endurance-volume";

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames => ["intended_low_share", "endurance_margin", "lighter_week_factor"];

    protected override Needs Needs => Needs.Rides | Needs.Tier | Needs.FinishedWeek | Needs.NoAway;

    protected override Basis Basis => Basis.Kinds;

    public override string Ask(PlanInForce plan) => plan.PlannedHours is { } hours
        ? $"About {Say.Hours(plan.Limits.IntendedLowShare * hours)} of easy riding, and not less than {Say.Hours(Least(plan.Limits, hours))}."
        : "As many easy hours as the planned hours and the intended low share make.";

    protected override Call Look(JudgedWeek week)
    {
        if (week.PlannedHours is not { } planned)
            return Call.NotJudged("there are no planned hours");
        var least = Least(week.Limits, planned);
        var low = week.Week.Bands.Low / 3600;
        if (!Close.Below(low, least))
            return Call.Kept;
        return Close.Below(low + Unbanded.SecondsIn(week.Week) / 3600, least)
            ? Call.Broken
            : Call.NotJudged("riding without power or heart rate to rate it could change the verdict");
    }

    protected override Account Tell(JudgedWeek week, Verdict verdict)
    {
        var planned = week.PlannedHours ?? 0;
        var asked = week.Limits.IntendedLowShare * planned;
        var low = week.Week.Bands.Low / 3600;
        var unknown = Unbanded.SecondsIn(week.Week);
        var known = unknown > 0 ? $"{Say.Hours(low)} of riding known to be easy, and {Say.Time(unknown)} that nothing could rate" : $"{Say.Hours(low)} of easy riding";
        var sentence = $"{known}; {Say.Percent(week.Limits.IntendedLowShare)} of {Say.Hours(planned)} planned is {Say.Hours(asked)}.";
        if (verdict == Verdict.Kept)
            return Account.Of(sentence);
        var missing = Least(week.Limits, planned) - low;
        return Account.Of(sentence, $"At least {Say.Time(Math.Ceiling(missing * 60) * 60)} more of easy riding.", new Occurrence
        {
            Verdict = Verdict.Broken,
            Numbers = [Numbered.Of("low_hours", low, 2), Numbered.Of("asked_low_hours", asked, 2), Numbered.Of("least_low_hours", Least(week.Limits, planned), 2)],
        });
    }

    private static double Least(Limits limits, double plannedHours) => limits.IntendedLowShare * plannedHours * (1 - limits.EnduranceMargin);
}
