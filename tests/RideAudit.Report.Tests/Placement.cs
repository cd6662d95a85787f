using UglyToad.PdfPig.Content;

namespace RideAudit.Report.Tests;

/// <summary>What stands where it should not on a page.</summary>
internal static class Placement
{
    private const double Hair = 0.6;
    private const float Closest = 1.5f;
    private const float LeastLine = 0.8f;

    /// <summary>Letters outside the margins.</summary>
    public static IEnumerable<string> Outside(Page page)
    {
        foreach (var letter in page.Letters.Where(IsInk))
        {
            var box = letter.BoundingBox;
            var inside = box.Left >= Drawn.Margin - Hair && box.Right <= page.Width - Drawn.Margin + Hair
                && box.Bottom >= Drawn.Margin - Hair && box.Top <= page.Height - Drawn.Margin + Hair;
            if (!inside)
                yield return $"'{letter.Value}' at {box} on page {page.Number}";
        }
    }

    /// <summary>Pairs of letters that overlap.</summary>
    public static IEnumerable<string> Overlaps(IEnumerable<Letter> all)
    {
        Letter[] letters = [.. all.Where(IsInk).OrderBy(letter => letter.BoundingBox.Left)];
        for (var i = 0; i < letters.Length; i++)
        {
            var box = letters[i].BoundingBox;
            for (var j = i + 1; j < letters.Length && letters[j].BoundingBox.Left < box.Right; j++)
            {
                var other = letters[j].BoundingBox;
                var across = Math.Min(box.Right, other.Right) - other.Left;
                var down = Math.Min(box.Top, other.Top) - Math.Max(box.Bottom, other.Bottom);
                var sameLine = Math.Abs(letters[i].StartBaseLine.Y - letters[j].StartBaseLine.Y) < 0.05;
                var allowed = sameLine ? 0.15 * letters[i].PointSize : 0.2;
                if (across > allowed && down > 0.2)
                    yield return $"'{letters[i].Value}' at {box} and '{letters[j].Value}' at {other}";
            }
        }
    }

    /// <summary>Texts that stand closer to each other than they may: beside one another by less than a point and a half, over one another by less than a line.</summary>
    /// <remarks>Pieces of one line follow each other without any gap.</remarks>
    public static IEnumerable<string> Touching(IReadOnlyList<(string Text, float Left, float Right, float Baseline, float Size)> texts)
    {
        for (var i = 0; i < texts.Count; i++)
        {
            for (var j = i + 1; j < texts.Count; j++)
            {
                var (a, b) = (texts[i], texts[j]);
                float down = Math.Abs(a.Baseline - b.Baseline), gap = Math.Max(a.Left, b.Left) - Math.Min(a.Right, b.Right);
                if (a.Text.Trim().Length == 0 || b.Text.Trim().Length == 0 || (down < 0.1f && Math.Abs(gap) < 0.05f))
                    continue;
                var lower = a.Baseline > b.Baseline ? a : b;
                if (down < 0.5f ? gap < Closest : gap < 0 && down < LeastLine * lower.Size)
                    yield return $"'{a.Text}' and '{b.Text}' at {a.Baseline:F1} and {b.Baseline:F1}, {gap:F1} apart";
            }
        }
    }

    private static bool IsInk(Letter letter) => letter.Value.Trim('\u00A0', ' ').Length > 0;
}
