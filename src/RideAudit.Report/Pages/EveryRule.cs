using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Report.Words;
using RideAudit.Rules;

namespace RideAudit.Report.Pages;

/// <summary>Every rule with its verdict, numbers, limits, evidence and source; broken ones first: the appendix.</summary>
/// <param name="width">Width, pt.</param>
internal sealed class EveryRule(ReviewDocument review, FontSet fonts, float width)
{
    private const float Indent = 82;

    /// <summary>The section's blocks.</summary>
    public IEnumerable<Block> Blocks()
    {
        yield return new SectionHead(fonts, "Every rule", width) { SpaceBefore = 24, KeepWithNext = true, Outline = "Every rule" };
        yield return new TextBlock(fonts, Counts(), Styles.Quiet, width) { KeepWithNext = true };
        if (WeekInWords.Of(review.Week) is { Length: > 0 } words)
            yield return new TextBlock(fonts, words, Styles.Body, width) { SpaceBefore = 3 };
        foreach (var finding in review.Findings.OrderByDescending(finding => finding.Verdict))
        {
            foreach (var block in Of(finding))
                yield return block;
        }
    }

    private string Counts()
    {
        var counts = review.Summary;
        return $"{counts.Broken} broken, {counts.Watch} to watch, {counts.Kept} kept, {counts.NotJudged} not judged. "
            + "Rules are judged on unrounded figures.";
    }

    private IEnumerable<Block> Of(Finding finding)
    {
        List<Block> lines = [.. Lines(finding)];
        Span[] source = [new Span(Source(finding), Styles.Small)];
        var bare = lines.Count == 0;
        yield return new FindingHead(finding, bare ? source : [], fonts, width, Indent) { SpaceBefore = 7, KeepWithNext = !bare, Anchored = false };
        if (bare)
            yield break;
        foreach (var line in lines)
            yield return line;
        yield return Line(source, false);
    }

    private IEnumerable<Block> Lines(Finding finding)
    {
        if (finding.Reason is { } reason && !finding.Sentence.Contains(reason, StringComparison.OrdinalIgnoreCase))
            yield return Line([new Span("Not judged: ", Styles.SmallStrong), new Span(reason, Styles.SmallInk)], true);
        foreach (var occurrence in finding.Occurrences.Where(occurrence => !IsBlank(occurrence)))
            yield return Line(Of(occurrence), true);
        if (finding.WouldHaveKept is { } kept)
            yield return Line([new Span("Would have kept it: ", Styles.SmallStrong), new Span(kept, Styles.SmallInk)], true);
    }

    private static bool IsBlank(Occurrence occurrence) => occurrence.Dates.IsEmpty && occurrence.Numbers.IsEmpty && occurrence.Rides.IsEmpty;

    private static string Source(Finding finding)
    {
        var named = NamedNumbers.Of(finding.Limits);
        var limits = named.Length == 0 ? "" : $"Limits: {named}. ";
        var grade = Formatting.Words.Of(finding.Evidence);
        var graded = finding.Source.StartsWith(grade, StringComparison.OrdinalIgnoreCase);
        return limits + (graded ? Shown.Capital(finding.Source) : $"{Shown.Capital(grade)}: {finding.Source}").TrimEnd('.') + ".";
    }

    private TextBlock Line(IEnumerable<Span> spans, bool keep) => new(fonts, spans, width - Indent) { Indent = Indent, KeepWithNext = keep };

    private IEnumerable<Span> Of(Occurrence occurrence)
    {
        var days = string.Join(", ", occurrence.Dates.Select(Shown.DayAndDate));
        var numbers = NamedNumbers.Of(occurrence.Numbers);
        yield return new Span(days + (days.Length > 0 && numbers.Length > 0 ? ": " : "") + numbers, Styles.SmallInk);
        foreach (var file in occurrence.Rides)
        {
            yield return new Span("  ", Styles.SmallInk);
            var index = IndexOf(file);
            var style = Styles.Small with { Colour = index < 0 ? Palette.Quiet : Palette.High };
            yield return new Span(file, style, index < 0 ? null : Places.Ride(index));
        }
    }

    private int IndexOf(string file)
    {
        for (var i = 0; i < review.Rides.Length; i++)
        {
            if (review.Rides[i].File == file)
                return i;
        }

        return -1;
    }
}
