using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Rules;
using RideAudit.Rules.Changes;

namespace RideAudit.Review;

/// <summary>Writes page one in words.</summary>
internal static class SummaryWriter
{
    private const int MostToChange = 3;

    public static SummaryEntry Write(
        WeekUnderReview week, WeekEntry entry, ImmutableArray<Finding> findings, SmallestChange? change, ImmutableArray<NoticeEntry> notices)
    {
        var ranked = RuleBook.MostSerious(findings);
        var data = DataLine.Of(week, notices);
        return new SummaryEntry
        {
            Headline = Headline.Of(week, ranked, findings),
            Subline = string.Join(' ', [Subline(findings, change), .. DataDoubts.Of(week), .. data is null ? [] : new[] { data }]),
            DataLine = data,
            Broken = findings.Count(f => f.Verdict == Verdict.Broken),
            Watch = findings.Count(f => f.Verdict == Verdict.Watch),
            Kept = findings.Count(f => f.Verdict == Verdict.Kept),
            NotJudged = findings.Count(f => f.Verdict == Verdict.NotJudged),
            ToChange = [.. ranked.Where(f => f.Advice is not null).Take(MostToChange).Select(ToChange)],
            Held = [.. findings.Select(f => f.Held).OfType<string>()],
            SplitSentence = SplitWords.Of(entry),
            Cautions = Cautions.All,
        };
    }

    private static ChangeAdvice ToChange(Finding finding) =>
        new(finding.Rule, finding.Advice ?? finding.Sentence, $"{finding.Sentence} {Shown.Sentence(Words.Of(finding.Evidence))}") { Verdict = finding.Verdict };

    private static string Subline(ImmutableArray<Finding> findings, SmallestChange? change)
    {
        var broken = findings.Count(f => f.Verdict == Verdict.Broken);
        var watch = findings.Count(f => f.Verdict == Verdict.Watch);
        var judged = findings.Count(f => f.Verdict != Verdict.NotJudged);
        var counts = (broken, watch) switch
        {
            _ when judged == 0 => "No rule could be judged.",
            (0, 0) => AllKept(judged, findings.Length),
            (0, _) => $"No rule broken, {Shown.Number(watch)} to watch of {Shown.Number(judged)} judged.",
            (_, 0) => $"{Shown.Number(broken)} of {Shown.Tally(judged, "rule")} broken.",
            _ => $"{Shown.Number(broken)} of {Shown.Tally(judged, "rule")} broken, {Shown.Number(watch)} to watch.",
        };
        return change is null ? counts : $"{counts} {change.Sentence}";
    }

    private static string AllKept(int judged, int all)
    {
        var judgeable = judged == all ? "" : " that could be judged";
        return judged == 1 ? $"The one rule{judgeable} was kept." : $"All {Shown.Tally(judged, "rule")}{judgeable} were kept.";
    }
}
