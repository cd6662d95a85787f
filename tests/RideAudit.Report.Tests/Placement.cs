using UglyToad.PdfPig.Content;

namespace RideAudit.Report.Tests;

/// <summary>What stands where it should not on a page.</summary>
internal static class Placement
{
    private const double Hair = 0.6;

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

    private static bool IsInk(Letter letter) => letter.Value.Trim('\u00A0', ' ').Length > 0;
}
