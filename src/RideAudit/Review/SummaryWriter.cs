using System.Collections.Immutable;
using System.Globalization;
using RideAudit.Document;
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
        var ranked = Ranking.MostSerious(findings);
        return new SummaryEntry
        {
            Headline = Headline.Of(week, ranked, findings),
            Subline = string.Join(' ', DataDoubts.Of(week, notices).Prepend(Subline(findings, change))),
            Broken = findings.Count(f => f.Verdict == Verdict.Broken),
            Watch = findings.Count(f => f.Verdict == Verdict.Watch),
            Kept = findings.Count(f => f.Verdict == Verdict.Kept),
            NotJudged = findings.Count(f => f.Verdict == Verdict.NotJudged),
            ToChange = [.. Ranking.ToChange(ranked).Take(MostToChange).Select(f => new ChangeAdvice(f.Rule, Advice.Title(f, week.Plan), Advice.Detail(f)))],
            Held = [.. findings.Where(f => f.Verdict == Verdict.Kept && HeldWords.IsWorthNaming(f, week, findings)).Select(f => HeldWords.Of(f, entry))],
            SplitSentence = SplitWords.Of(entry),
            Cautions = Cautions.All,
        };
    }

    private static string Subline(ImmutableArray<Finding> findings, SmallestChange? change)
    {
        var broken = findings.Count(f => f.Verdict == Verdict.Broken);
        var watch = findings.Count(f => f.Verdict == Verdict.Watch);
        var judged = findings.Count(f => f.Verdict != Verdict.NotJudged);
        var counts = (broken, watch) switch
        {
            (0, 0) when judged == findings.Length => string.Create(CultureInfo.InvariantCulture, $"All {judged} rules were kept."),
            (0, 0) => string.Create(CultureInfo.InvariantCulture, $"All {judged} rules that could be judged were kept."),
            (0, _) => string.Create(CultureInfo.InvariantCulture, $"No rule broken, {watch} to watch of {judged} judged."),
            (_, 0) => string.Create(CultureInfo.InvariantCulture, $"{broken} of {judged} rules broken."),
            _ => string.Create(CultureInfo.InvariantCulture, $"{broken} of {judged} rules broken, {watch} to watch."),
        };
        if (judged == 0)
            counts = "No rule could be judged.";
        return change is null ? counts : $"{counts} {change.Sentence}";
    }
}
