using RideAudit.Document;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;

namespace RideAudit.Report.Pages;

/// <summary>What became of each planned session, in a line.</summary>
/// <param name="review">The review.</param>
/// <param name="fonts">Fonts.</param>
/// <param name="width">Width, pt.</param>
internal sealed class PlannedSection(ReviewDocument review, FontSet fonts, float width)
{
    /// <summary>A head and a line a session; none without a plan table.</summary>
    public IEnumerable<Block> Blocks()
    {
        HeldEntry[] held = [.. review.Week.PlannedAndRidden];
        if (held.Length == 0)
            yield break;
        yield return new TextBlock(fonts, "Planned and ridden", Styles.Strong, width) { SpaceBefore = 9, KeepWithNext = true, Outline = "Planned and ridden" };
        for (int i = 0; i < held.Length; i++)
            yield return new TextBlock(fonts, held[i].Sentence, Styles.SmallInk, width) { SpaceBefore = 1, KeepWithNext = i < held.Length - 1 };
        if (review.Week.Planned?.Sentence is { } sentence)
            yield return new TextBlock(fonts, sentence, Styles.Small, width) { SpaceBefore = 2 };
    }
}
