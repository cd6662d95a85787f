using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Pages;

/// <summary>The threshold power that everything is measured against; files that could not be used, repairs, assumptions.</summary>
/// <param name="width">Width, pt.</param>
internal sealed class NoticesSection(ReviewDocument review, FontSet fonts, float width)
{
    private const float Gap = 10;
    private const float ParagraphGap = 7;

    /// <summary>The section's blocks.</summary>
    public IEnumerable<Block> Blocks()
    {
        yield return new SectionHead(fonts, "Data and notices", width) { SpaceBefore = 24, KeepWithNext = true, Outline = "Data and notices" };
        foreach (var block in new ThresholdLines(review, fonts, width).Blocks())
            yield return block;
        foreach (var writing in fonts.Lacking([review.Rider.Label, review.Note ?? "", .. review.Rides.Select(ride => ride.File), .. review.Notices.Select(notice => notice.File ?? "")]))
            yield return new TextBlock(fonts, writing.Advice, Styles.Body, width) { SpaceBefore = ParagraphGap };
        if (review.Notices.IsEmpty)
        {
            yield return new TextBlock(fonts, "Every file was read whole; nothing was repaired or assumed.", Styles.Body, width) { SpaceBefore = ParagraphGap };
            yield break;
        }

        yield return new TextBlock(fonts, Lead(), Styles.Quiet, width) { SpaceBefore = ParagraphGap, KeepWithNext = true };
        float file = width * 0.27f, problem = width * 0.14f;
        Column[] columns =
        [
            new("file", 0, file - Gap), new("problem", file, problem - Gap), new("what was done", file + problem, width - file - problem),
        ];
        var heads = RowBlock.Heads(fonts, columns, width);
        yield return new GapBlock(4) { KeepWithNext = true };
        yield return heads;
        foreach (var notice in review.Notices)
            yield return Row(notice, columns, heads);
    }

    private string Lead()
    {
        var unusable = review.Notices.Where(notice => notice.Unusable).Sum(notice => notice.OtherFiles ?? 1);
        var files = unusable switch { 0 => "Every file could be used.", 1 => "One file could not be used.", _ => $"{unusable} files could not be used." };
        return files + " One bad file never stops the others.";
    }

    private RowBlock Row(NoticeEntry notice, Column[] columns, RowBlock heads)
    {
        var problem = notice.Unusable ? Styles.SmallStrong : Styles.SmallInk;
        var kept = notice.Kept is { } some && !notice.Sentence.Contains(some, StringComparison.OrdinalIgnoreCase) ? $" Kept: {some}." : "";
        Span[] texts =
        [
            new(notice.File ?? (notice.OtherFiles is { } files ? Shown.Tally(files, "other file") : "whole folder"), Styles.SmallInk), new(notice.Problem, problem), new(notice.Sentence + kept, Styles.SmallInk),
        ];
        return new RowBlock(fonts, columns, texts, width) { RunningHead = heads };
    }
}
