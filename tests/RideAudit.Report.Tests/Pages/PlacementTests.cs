using RideAudit.Report.Fonts;
using RideAudit.Report.Pages;

namespace RideAudit.Report.Tests.Pages;

public sealed class PlacementTests
{
    public static IEnumerable<object[]> Everything => Drawn.Everything;

    [Theory]
    [MemberData(nameof(Everything))]
    public void No_letter_stands_outside_the_margins(string name, Paper paper)
    {
        using var document = Drawn.Open(name, paper);
        foreach (var page in document.GetPages())
            Assert.Equal([], Placement.Outside(page).Take(3));
    }

    [Theory]
    [MemberData(nameof(Everything))]
    public void No_two_texts_overlap(string name, Paper paper)
    {
        using var document = Drawn.Open(name, paper);
        foreach (var page in document.GetPages())
            Assert.Equal([], Placement.Overlaps(page.Letters).Take(3));
    }

    [Theory]
    [MemberData(nameof(Everything))]
    public void No_line_starts_with_a_parting_dot_or_a_unit(string name, Paper paper)
    {
        using var document = Drawn.Open(name, paper);

        Assert.DoesNotContain(document.GetPages().SelectMany(Drawn.Lines), line => line.StartsWith('·') || line.StartsWith('%'));
    }

    [Theory]
    [MemberData(nameof(Everything))]
    public void No_two_labels_touch(string name, Paper paper)
    {
        var review = Drawn.Sample(name);
        var pages = new ReviewPages(review, new PageOptions { Paper = paper }, FontSet.OfThisMachine, RideMaker.TracesOf(review));
        for (var number = 0; number < pages.Count; number++)
        {
            var page = new PageRecord(FontSet.OfThisMachine);
            pages.Draw(number, page);
            Assert.Equal([], Placement.Touching(page.Texts).Take(3));
        }
    }

    [Fact]
    public void A_touch_would_be_seen()
    {
        (string, float, float, float, float)[] beside = [("250", 10, 22, 40, 7.5f), ("W", 22.5f, 30, 40, 7.5f)], under = [("250", 10, 22, 40, 7.5f), ("W", 14, 22, 45, 7.5f)];

        Assert.NotEmpty(Placement.Touching(beside));
        Assert.NotEmpty(Placement.Touching(under));
    }

    [Fact]
    public void An_overlap_would_be_seen()
    {
        using var document = Drawn.Open("middle", Paper.A4);
        var page = document.GetPage(1);

        Assert.NotEmpty(Placement.Overlaps([.. page.Letters, .. page.Letters]));
    }
}
