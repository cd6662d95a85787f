using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace RideAudit.Report.Tests;

/// <summary>What stands where it should not on a page.</summary>
internal static class Placement
{
    private const double Hair = 0.6;

    /// <summary>Letters outside the margins.</summary>
    public static IEnumerable<string> Outside(Page page)
    {
        foreach (Letter letter in page.Letters.Where(IsInk))
        {
            PdfRectangle box = letter.BoundingBox;
            bool inside = box.Left >= Drawn.Margin - Hair && box.Right <= page.Width - Drawn.Margin + Hair
                && box.Bottom >= Drawn.Margin - Hair && box.Top <= page.Height - Drawn.Margin + Hair;
            if (!inside)
                yield return $"'{letter.Value}' at {box} on page {page.Number}";
        }
    }

    /// <summary>Pairs of letters that overlap.</summary>
    public static IEnumerable<string> Overlaps(IEnumerable<Letter> all)
    {
        Letter[] letters = [.. all.Where(IsInk).OrderBy(letter => letter.BoundingBox.Left)];
        for (int i = 0; i < letters.Length; i++)
        {
            PdfRectangle box = letters[i].BoundingBox;
            for (int j = i + 1; j < letters.Length && letters[j].BoundingBox.Left < box.Right; j++)
            {
                PdfRectangle other = letters[j].BoundingBox;
                double across = Math.Min(box.Right, other.Right) - other.Left;
                double down = Math.Min(box.Top, other.Top) - Math.Max(box.Bottom, other.Bottom);
                bool sameLine = Math.Abs(letters[i].StartBaseLine.Y - letters[j].StartBaseLine.Y) < 0.05;
                double allowed = sameLine ? 0.15 * letters[i].PointSize : 0.2;
                if (across > allowed && down > 0.2)
                    yield return $"'{letters[i].Value}' at {box} and '{letters[j].Value}' at {other}";
            }
        }
    }

    private static bool IsInk(Letter letter) => letter.Value.Trim('\u00A0', ' ').Length > 0;
}
