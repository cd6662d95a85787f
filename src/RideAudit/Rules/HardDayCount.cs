using System.Collections.Immutable;
using NodaTime;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>No more hard days than the tier and the rider's experience bear.</summary>
internal sealed class HardDayCount : Rule<HardDayCount.Reading>
{
    public override string Id => "hard-day-count";

    public override string Name => "Hard day count";

    public override string ShortName => "hard-day";

    public override string Effect(Finding finding, LocalDate? riddenOn) => "made a hard day too many";

    public override Standing Standing { get; } = new() { Rank = 40, Group = RuleGroup.HardDays, Protects = true };

    public override bool IsChangeSought => true;

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames => ["high_days_at_most", "threshold_days_on_top", "second_hard_ride_h"];

    protected override Needs Needs => Needs.Rides | Needs.Tier | Needs.NoEvent;

    protected override Basis Basis => Basis.Kinds;

    protected override bool UnratedMatters => true;

    public override string Ask(PlanInForce plan) => Shown.Capital(Allowed(plan.Limits)) + ".";

    protected override Look Read(JudgedWeek week)
    {
        int high = 0, threshold = 0, days = 0;
        foreach (var day in week.Week.Days)
        {
            high += day.HighSessions;
            threshold += day.ThresholdSessions;
            days += day.IsHard ? 1 : 0;
        }
        var tooMany = high > week.Limits.HighDaysAtMost || high + threshold > week.Limits.HighDaysAtMost + week.Limits.ThresholdDaysOnTop;
        return As(tooMany ? Verdict.Broken : Verdict.Kept, new Reading(high, threshold, days));
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        var limits = week.Limits;
        return new RuleWords
        {
            Sentence = $"{Shown.Capital(Counted(reading))}; the plan has {Allowed(limits)}.",
            WouldHaveKept = Easier(reading, limits, week.AsksForMore ? "ridden easy" : "ridden easy or left out"),
            Advice = limits.HighDaysAtMost + limits.ThresholdDaysOnTop == 0 ? "Keep all of the week easy."
                : limits.ThresholdDaysOnTop > 0
                ? $"Keep to {Shown.Count(limits.HighDaysAtMost, "high day")} and {Shown.Count(limits.ThresholdDaysOnTop, "threshold day")} a week."
                : $"Keep to {Shown.Count(limits.HighDaysAtMost, "hard day")} a week.",
            Headline = TooMany(reading, limits),
            Held = reading.Hard > 0 && !LongRideFirst.Asks(week) ? "number of hard days" : null,
            Figure = Counted(reading),
            Occurrences = verdict == Verdict.Kept ? [] : [Describe(reading, [.. week.Week.Days.Where(d => d.IsHard)])],
        };
    }

    /// <summary>Days, and where a day held two hard sessions, sessions.</summary>
    private static string Counted(Reading reading)
    {
        var (high, threshold) = (Shown.Count(reading.High, $"high {reading.Unit}"), Shown.Count(reading.Threshold, $"threshold {reading.Unit}"));
        var counted = reading.Hard == 0 ? "no hard days" : reading.High == 0 ? threshold : reading.Threshold == 0 ? high : $"{high} and {threshold}";
        return reading.Hard == reading.Days ? counted : $"{counted} on {Shown.Count(reading.Days, "day")}, and a second hard ride of a day counts like another day";
    }

    /// <summary>What was too many, beside how many the plan has.</summary>
    private static string TooMany(Reading reading, Limits limits)
    {
        var most = limits.HighDaysAtMost + limits.ThresholdDaysOnTop;
        var (kind, ridden, asked) = reading.Hard > most ? ("hard", reading.Hard, most) : ("high", reading.High, limits.HighDaysAtMost);
        var on = reading.Hard > reading.Days ? $" on {Shown.Count(reading.Days, "day")}" : "";
        return $"{Shown.Count(ridden, $"{kind} {reading.Unit}")}{on} where the plan has {(asked == 0 ? "none" : Shown.InWords(asked))}";
    }

    private static string Easier(Reading reading, Limits limits, string instead)
    {
        var tooMany = Math.Max(0, reading.Hard - limits.HighDaysAtMost - limits.ThresholdDaysOnTop);
        var tooHigh = Math.Max(0, reading.High - limits.HighDaysAtMost);
        var kind = tooHigh >= tooMany ? "high" : "hard";
        var fewer = $"{Shown.Capital(Shown.Count(Math.Max(tooMany, tooHigh), $"{kind} {reading.Unit}"))} fewer";
        return tooMany == 0 ? $"{fewer}; around threshold would have been enough."
            : tooHigh > tooMany ? $"{fewer}: {Shown.InWords(tooMany)} {instead}, around threshold enough for the rest."
            : tooHigh is > 0 && tooHigh < tooMany ? $"{fewer}, {Shown.InWords(tooHigh)} of them high, {instead}."
            : $"{fewer}, {instead}.";
    }

    private static Occurrence Describe(Reading reading, DayFacts[] hard) => new()
    {
        Verdict = Verdict.Broken,
        Dates = [.. hard.Select(d => d.Date)],
        Rides = [.. hard.SelectMany(d => d.Rides).Where(r => r.IsHard).Select(r => r.File)],
        Numbers =
        [
            NamedNumber.Of("high_days", reading.High, 0, v => $"{Shown.Tally((int)v, reading.Unit)} high"),
            NamedNumber.Of("threshold_days", reading.Threshold, 0, v => $"{Shown.Tally((int)v, reading.Unit)} threshold"),
        ],
    };

    private static string Allowed(Limits limits) => limits.HighDaysAtMost + limits.ThresholdDaysOnTop == 0 ? "no hard days"
        : limits.HighDaysAtMost == 0 ? $"no high days and at most {Shown.Count(limits.ThresholdDaysOnTop, "threshold day")}"
        : $"at most {Shown.Count(limits.HighDaysAtMost, "high day")} and {Shown.Count(limits.HighDaysAtMost + limits.ThresholdDaysOnTop, "hard day")} in all";

    /// <summary>What it reads. A second hard ride of a day, three hours or more after the first, is a session of its own.</summary>
    /// <param name="High">High sessions.</param>
    /// <param name="Threshold">Threshold sessions.</param>
    /// <param name="Days">Hard days.</param>
    internal readonly record struct Reading(int High, int Threshold, int Days)
    {
        public int Hard => High + Threshold;

        public string Unit => Hard == Days ? "day" : "session";
    }
}
