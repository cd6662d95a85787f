using RideAudit.Document;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;

namespace RideAudit.Report.Pages;

/// <summary>What became of each planned session, in a line.</summary>
/// <param name="width">Width, pt.</param>
internal sealed class PlannedSection(ReviewDocument review, FontSet fonts, float width)
{
    private const float Between = 8;

    /// <summary>A head and a line a session; none without a plan table.</summary>
    public IEnumerable<Block> Blocks()
    {
        HeldEntry[] held = [.. review.Week.PlannedAndRidden];
        if (held.Length == 0)
            yield break;
        yield return new TextBlock(fonts, "Planned and ridden", Styles.Strong, width) { SpaceBefore = 9, KeepWithNext = true, Outline = "Planned and ridden" };
        for (var i = 0; i < held.Length; i++)
        {
            if (i + 1 < held.Length && HalfLine(held[i]) is { } left && HalfLine(held[i + 1]) is { } right)
            {
                yield return new SideBySide(left, right, (width / 2) + Between) { SpaceBefore = 1, KeepWithNext = i + 2 < held.Length };
                i++;
                continue;
            }

            yield return new TextBlock(fonts, held[i].Sentence, Styles.SmallInk, width) { SpaceBefore = 1, KeepWithNext = i < held.Length - 1 };
        }

        if (review.Week.Planned?.Sentence is { } sentence)
            yield return new TextBlock(fonts, sentence, Styles.Small, width) { SpaceBefore = 2 };
    }

    /// <summary>A line that takes half the width; null for one that needs more.</summary>
    private TextBlock? HalfLine(HeldEntry held)
    {
        var line = new TextBlock(fonts, held.Sentence, Styles.SmallInk, (width / 2) - Between);
        return line.Lines.Count == 1 ? line : null;
    }
}
