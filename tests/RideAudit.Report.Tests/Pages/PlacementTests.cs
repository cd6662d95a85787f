using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace RideAudit.Report.Tests.Pages;

public sealed class PlacementTests
{
    private const double Hair = 0.6;

    public static IEnumerable<object[]> Everything => Drawn.Everything;

    [Theory]
    [MemberData(nameof(Everything))]
    public void No_letter_stands_outside_the_margins(string name, Paper paper)
    {
        using PdfDocument document = Drawn.Open(name, paper);
        foreach (Page page in document.GetPages())
        {
            foreach (Letter letter in page.Letters.Where(letter => letter.Value.Trim('\u00A0', ' ').Length > 0))
            {
                PdfRectangle box = letter.BoundingBox;
                bool inside = box.Left >= Drawn.Margin - Hair && box.Right <= page.Width - Drawn.Margin + Hair
                    && box.Bottom >= Drawn.Margin - Hair && box.Top <= page.Height - Drawn.Margin + Hair;
                Assert.True(inside, $"'{letter.Value}' at {box} on page {page.Number} of {name} is outside the margins.");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Everything))]
    public void No_two_texts_overlap(string name, Paper paper)
    {
        using PdfDocument document = Drawn.Open(name, paper);
        foreach (Page page in document.GetPages())
            Assert.Equal([], Overlaps(page).Take(3));
    }

    [Fact]
    public void An_overlap_would_be_seen()
    {
        using PdfDocument document = Drawn.Open("middle", Paper.A4);
        Page page = document.GetPage(1);
        Letter[] doubled = [.. page.Letters, .. page.Letters];

        Assert.NotEmpty(Overlaps(doubled));
    }

    private static IEnumerable<string> Overlaps(Page page) => Overlaps([.. page.Letters]);

    private static IEnumerable<string> Overlaps(Letter[] all)
    {
        Letter[] letters = [.. all.Where(letter => letter.Value.Trim('\u00A0', ' ').Length > 0).OrderBy(letter => letter.BoundingBox.Left)];
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
}
