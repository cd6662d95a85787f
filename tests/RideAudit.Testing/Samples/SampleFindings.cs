using System.Collections.Immutable;
using RideAudit.Rules;

namespace RideAudit.Testing.Samples;

/// <summary>A finding for each rule of the method: kept unless a sample says otherwise.</summary>
public static class SampleFindings
{
    private const string Practice = "common practice, no source";

    private static readonly (string Rule, string Kept, Evidence Evidence, string Source)[] Rules =
    [
        ("hard-day-spacing", "Every hard day has an easier day after it.", Evidence.CommonPractice, Practice),
        ("hard-day-count", "Two hard days; the plan allows 2 high and 1 threshold.", Evidence.CommonPractice, Practice),
        ("rest-days", "Three rest days; 2 asked.", Evidence.CommonPractice, Practice),
        ("rest-after-load", "The two heaviest days were followed by rest.", Evidence.CommonPractice, Practice),
        ("long-ride", "The long ride was long and easy enough.", Evidence.CommonPractice, Practice),
        ("endurance-volume", "The low-band hours the plan asks for were ridden.", Evidence.CommonPractice, Practice),
        ("intensity-split", "The low share lies within the tolerance of the intended one.", Evidence.PublishedStudy, "Seiler and Kjerland, 2006, Quantifying training intensity distribution in elite endurance athletes, Scand J Med Sci Sports 16:49–56"),
        ("weekly-hours", "Hours within 15 % of plan.", Evidence.CommonPractice, Practice),
        ("chronic-ramp", "Chronic load rose by 2.1 points, 5 at most asked.", Evidence.CommonPractice, Practice),
        ("weekly-growth", "Hours did not grow beyond 1.3 times the recent mean.", Evidence.PublishedStudy, "Buist et al., 2008, Am J Sports Med 36(1):33–39 (runners): no effect of 10 % as such"),
        ("longest-ride-jump", "No ride was much longer than the longest of the month before.", Evidence.PublishedStudy, "Frandsen et al., 2025, BJSM 59(17):1203–1210 (runners); a caution"),
        ("growth-is-endurance", "Hours did not grow.", Evidence.CommonPractice, Practice),
        ("easy-rides-easy", "Every easy ride stayed easy.", Evidence.CommonPractice, Practice),
        ("lighter-week", "The week of 18 May was a lighter one.", Evidence.CommonPractice, Practice),
        ("monotony", "Monotony 1.1; 1.5 asks for a look.", Evidence.Handbook, "Foster, 1998, from memory"),
        ("long-ride-first", "Fewer than three hard days.", Evidence.CommonPractice, Practice),
        ("threshold-fresh", "No best effort says the threshold is out of date.", Evidence.CommonPractice, Practice),
    ];

    /// <summary>All rules, some replaced.</summary>
    public static ImmutableArray<Finding> With(params Finding[] changed) =>
        [.. Rules.Select(rule => changed.FirstOrDefault(finding => finding.Rule == rule.Rule) ?? Finding(rule.Rule, Verdict.Kept, rule.Kept))];

    /// <summary>All rules not judged, for one reason.</summary>
    public static ImmutableArray<Finding> NoneJudged(string reason, params Finding[] changed) =>
        [.. Rules.Select(rule => changed.FirstOrDefault(finding => finding.Rule == rule.Rule) ?? Finding(rule.Rule, Verdict.NotJudged, "Not judged this week.") with { Reason = reason })];

    /// <summary>One finding with its rule's evidence and source.</summary>
    /// <summary>A limit as a rule gives it.</summary>
    public static NamedNumber Limit(string name, double value) => new(name, value, Plan.LimitCatalogue.Find(name)!.InWords(value));

    public static Finding Finding(string rule, Verdict verdict, string sentence)
    {
        (_, _, var evidence, var source) = Rules.Single(entry => entry.Rule == rule);
        return new Finding { Rule = rule, Name = Formatting.Shown.Capital(rule.Replace('-', ' ')), Verdict = verdict, Sentence = sentence, Evidence = evidence, Source = source };
    }
}
