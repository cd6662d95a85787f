using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Rules;

namespace RideAudit.Testing.Samples;

/// <summary>The season behind a sample week: verdicts of the weeks before, and whether the rider improves.</summary>
public static class SampleSeason
{
    private const int MostWeeks = 8;
    private static readonly int[] Windows = [60, 300, 1200];

    public static ImmutableArray<RuleHistoryEntry> Rules(ReviewSpec spec)
    {
        var weeks = Math.Min(MostWeeks, spec.HistoryWeeks);
        return
        [
            .. spec.Findings.Select((finding, rule) => new RuleHistoryEntry(
                finding.Rule,
                [.. Enumerable.Range(0, weeks).Select(week => new RuleHistoryEntry.Week(spec.Start.PlusWeeks(week - weeks + 1), week == weeks - 1 ? finding.Verdict : Before(rule, week)))])
            {
                Name = finding.Name,
            }),
        ];
    }

    public static ProgressEntry Progress(ReviewSpec spec)
    {
        var last = spec.Start.PlusDays(6);
        return new ProgressEntry
        {
            EasyHeartRateBpm = 131,
            EasyPowerW = [.. Enumerable.Range(0, spec.HistoryWeeks).Select(week => new ProgressEntry.Figure(last.PlusWeeks(week - spec.HistoryWeeks + 1), 148 + (week % 5 * 2.5), $"easy-{week}.fit"))],
            LongRideDriftPercent = [.. Enumerable.Range(0, spec.HistoryWeeks / 2).Select(week => new ProgressEntry.Figure(last.PlusWeeks((2 * week) - spec.HistoryWeeks + 1), 6.5 - (week * 0.3), $"long-{week}.fit"))],
            Bests =
            [
                .. Enumerable.Range(0, Math.Min(4, spec.HistoryWeeks / 6)).Select(block => new ProgressEntry.BestsOfBlock(
                    last.PlusWeeks(6 * (block - 3)),
                    [.. Windows.Select((seconds, place) => new ProgressEntry.BestOfBlock(seconds, 380 - (60 * place) + (4 * block), block == 0 ? null : 376 - (60 * place) + (4 * block)))])),
            ],
            ThresholdEvidenceOn = last.PlusDays(-76),
            ThresholdEvidenceDays = 76,
            TestThreshold = true,
            EasyPower = new("At 131 bpm easy rides gave 155 W lately, 149 W before.", "Heat, sleep or a new sensor move it too."),
            Drift = new("On long rides heart rate drifted 4.4 % lately, 5.9 % before.", "Heat, drink and pace move it too."),
            Best = new("The last six weeks hold the best 1 min, 5 min and 20 min so far.", "A best is only as good as the effort behind it."),
            Threshold = new("Threshold power 250 W, 76 days old: test it again.", "An old threshold bends every share in this review."),
        };
    }

    private static Verdict Before(int rule, int week) => ((rule * 7) + (week * 3)) switch
    {
        var mixed when mixed % 11 == 0 => Verdict.Broken,
        var mixed when mixed % 9 == 0 => Verdict.Watch,
        var mixed when mixed % 13 == 0 => Verdict.NotJudged,
        _ => Verdict.Kept,
    };
}
