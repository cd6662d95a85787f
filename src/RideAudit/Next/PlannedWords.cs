using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>What to ride on a laid-out day, in one or two sentences.</summary>
/// <remarks>Session shapes are common practice, no source.</remarks>
/// <param name="plan">The plan, for its band cuts.</param>
/// <param name="threshold">Threshold power; null when unknown: then no watts are named.</param>
internal sealed class PlannedWords(PlanInForce plan, Watts? threshold)
{
    private const int HighRepeat = 5;
    private const int ThresholdRepeat = 10;

    public string Of(PlannedDay day) => day.Kind switch
    {
        DayKind.High => $"Warm up for {Shown.Minutes(15)}; {Repeats(day.WorkMinutes, HighRepeat)} at {Span(100, 106)}, {Shown.Minutes(4)} easy between; easy to the end.",
        DayKind.Threshold => $"Warm up for {Shown.Minutes(15)}; {Repeats(day.WorkMinutes, ThresholdRepeat)} at {Span(86, 90)}, {Shown.Minutes(4)} easy between; easy to the end.",
        DayKind.Long => $"Easy throughout, {Easy()}; eat and drink from the first hour on.",
        DayKind.Endurance => $"Easy throughout, {Easy()}.",
        DayKind.Recovery => $"Very easy, {Below(plan.Limits.RecoveryPowerPercent)}, or rest.",
        _ => "Rest.",
    };

    // Riding as easy as the band allows all day is not easy: the range leaves room below the cut (common practice, no source).
    private string Easy()
    {
        var most = Math.Ceiling(plan.Rider.Plan.LowerBandCutPercent) - 1;
        return $"at {Span(Math.Min(55, most - 15), most)}";
    }

    private static string Repeats(int minutes, int each) => Shown.Number(minutes / each) + Shown.Joint + "×" + Shown.Joint + Shown.Minutes(each);

    private string Span(double from, double to) => $"{Shown.Range(from, to, "%")} of threshold power{Watts(from, to)}";

    private string Below(double percent) =>
        $"below {Shown.Percent(percent)} of threshold power{(threshold is { } t ? $" ({Shown.Watts(t.Value * percent / 100)})" : "")}";

    private string Watts(double from, double to) =>
        threshold is { } t ? $" ({Shown.Range(t.Value * from / 100, t.Value * to / 100, "W")})" : "";
}
