using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Report.Words;
using RideAudit.Rules;

namespace RideAudit.Report.Pages;

/// <summary>Broken and watched rules in full with their last weeks, then the others by week with this one's figure.</summary>
/// <param name="review">The review.</param>
/// <param name="marks">What each rule rests on.</param>
/// <param name="width">Width, pt.</param>
internal sealed class RulesSection(ReviewDocument review, SourceMarks marks, FontSet fonts, float width)
{
    private const float Indent = 74;
    private const int MostOccurrences = 4;

    /// <summary>The section's blocks.</summary>
    public IEnumerable<Block> Blocks()
    {
        yield return new SectionHead(fonts, Title(), width) { SpaceBefore = 14, KeepWithNext = true, Outline = "The rules" };
        var weeks = review.RuleHistory.IsEmpty ? 0 : review.RuleHistory[0].Weeks.Length;
        if (weeks > 1 && Wanting().Any())
            yield return new TextBlock(fonts, $"Small marks: the last {Shown.Tally(weeks, "week")}, this one at the right.", Styles.Tiny, width) { KeepWithNext = true };
        var told = false;
        foreach (var finding in Wanting())
        {
            Block[] lines = [.. Lines(finding, told)];
            told |= finding.WouldHaveKept is { } kept && kept == review.SmallestChange?.Sentence;
            Span[] mark = [new Span(marks.Of(finding.Rule), Styles.Quiet)];
            yield return new FindingHead(finding, mark, fonts, width, Indent)
            {
                SpaceBefore = 4,
                KeepWithNext = lines.Length > 0,
                Weeks = [.. review.RuleHistory.FirstOrDefault(entry => entry.Rule == finding.Rule)?.Weeks.Select(week => week.Verdict) ?? []],
            };
            foreach (var line in lines)
                yield return line;
        }

        foreach (var row in new RuleStrip(review, marks, fonts, width).Blocks())
            yield return row;
    }

    private IEnumerable<Finding> Wanting() =>
        review.Findings.Where(finding => finding.Verdict is Verdict.Broken or Verdict.Watch).OrderByDescending(finding => finding.Verdict).ThenBy(finding => finding.Standing.Rank);

    private string Title() => (review.Summary.Broken, review.Summary.Watch) switch
    {
        (0, 0) => review.Summary.Kept == 0 ? "No rule could be judged" : "Every rule that could be judged was kept",
        (0, var watch) => $"{Shown.Capital(Shown.Count(watch, "rule"))} to watch",
        (var broken, 0) => $"{Shown.Capital(Shown.Count(broken, "rule"))} broken",
        var (broken, watch) => $"{Shown.Capital(Shown.Count(broken, "rule"))} broken, {Shown.InWords(watch)} to watch",
    };

    private IEnumerable<Block> Lines(Finding finding, bool changeIsTold)
    {
        // One place is what the sentence says already.
        Occurrence[] told = finding.Occurrences.Length < 2 ? [] : [.. finding.Occurrences.Where(occurrence => !occurrence.Dates.IsEmpty || !occurrence.Numbers.IsEmpty)];
        for (var i = 0; i < Math.Min(told.Length, MostOccurrences); i++)
        {
            var last = i == told.Length - 1 || i == MostOccurrences - 1;
            var more = last && told.Length > MostOccurrences ? $" And {Shown.Count(told.Length - MostOccurrences, "more", "more")}." : "";
            yield return Line(Of(told[i], more), keep: !last || finding.WouldHaveKept is not null);
        }

        if (finding.WouldHaveKept is { } kept)
            yield return Line(Kept(kept, changeIsTold), keep: false);
    }

    // The smallest change is a sentence of its own, told once.
    private Span[] Kept(string kept, bool changeIsTold)
    {
        var isChange = kept == review.SmallestChange?.Sentence;
        var (head, text) = !isChange ? (SaysSo(kept) ? "" : "Would have kept it: ", kept) : changeIsTold ? ("Would have kept it: ", "the same change.") : ("", kept);
        return [new Span(head, Styles.SmallStrong), new Span(text, isChange && !changeIsTold ? Styles.SmallStrong : Styles.SmallInk)];
    }

    private static bool SaysSo(string kept) => kept.Contains(" would have kept ", StringComparison.Ordinal);

    private TextBlock Line(IEnumerable<Span> spans, bool keep) => new(fonts, spans, width - Indent) { Indent = Indent, KeepWithNext = keep };

    private IEnumerable<Span> Of(Occurrence occurrence, string more)
    {
        int ride = occurrence.Rides.IsEmpty ? -1 : review.Rides.ToList().FindIndex(ride => ride.File == occurrence.Rides[0]);
        var days = string.Join(", ", occurrence.Dates.Select(Shown.ShortDay));
        var style = Styles.SmallInk with { Colour = ride < 0 ? Palette.Ink : Palette.High };
        if (days.Length > 0)
            yield return new Span(days + ": ", style, ride < 0 ? null : Places.Ride(ride));
        yield return new Span(Shown.Sentence(NamedNumbers.Of(occurrence.Numbers)) + more, Styles.SmallInk);
    }
}
