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

    [Fact]
    public void An_overlap_would_be_seen()
    {
        using var document = Drawn.Open("middle", Paper.A4);
        var page = document.GetPage(1);

        Assert.NotEmpty(Placement.Overlaps([.. page.Letters, .. page.Letters]));
    }
}
