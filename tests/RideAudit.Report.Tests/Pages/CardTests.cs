using RideAudit.Raster;
using RideAudit.Report.Fonts;
using RideAudit.Report.Pages;
using RideAudit.Report.Pdf;
using SkiaSharp;

namespace RideAudit.Report.Tests.Pages;

public sealed class CardTests
{
    public static IEnumerable<object[]> Names => SampleReviews.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void No_text_of_the_card_is_under_26_pixels(string name)
    {
        var sizes = new List<float>();
        new CardPages(Drawn.Sample(name), FontSet.OfThisMachine).Draw(0, new TextSizes(sizes));

        Assert.NotEmpty(sizes);
        Assert.True(sizes.Min() * CardPages.Scale >= 26);
    }

    [Fact]
    public void The_card_is_portrait_and_1080_pixels_wide()
    {
        using var stream = new MemoryStream();
        ReviewPicture.WriteCard(SampleReviews.Middle(), stream);
        using var card = SKBitmap.Decode(stream.ToArray());

        Assert.Equal(1080, card.Width);
        Assert.True(card.Height > card.Width);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_card_holds_the_headline_the_changes_one_line_on_data_and_a_caution_and_cuts_nothing(string name)
    {
        var review = Drawn.Sample(name);
        var pages = new CardPages(review, FontSet.OfThisMachine);
        using var document = Drawn.Open(PdfMaker.Make(pages, FontSet.OfThisMachine, "card", "card", review.AsOf));
        var card = document.GetPage(1);
        var text = Drawn.TextOf(card);

        Assert.Contains(Drawn.Plain(review.Summary.Headline), text, StringComparison.Ordinal);
        Assert.All(review.Summary.ToChange, advice => Assert.Contains(Drawn.Plain(advice.Title), text, StringComparison.Ordinal));
        Assert.Contains("Data: ", text, StringComparison.Ordinal);
        Assert.Contains("see a doctor", text, StringComparison.Ordinal);
        Assert.DoesNotContain("…", text, StringComparison.Ordinal);
        Assert.All(card.Letters, letter => Assert.InRange(letter.BoundingBox.Left, 30, CardPages.Width - 30));
        Assert.All(card.Letters, letter => Assert.InRange(letter.BoundingBox.Bottom, 20, card.Height - 20));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_labels_of_the_card_touch(string name)
    {
        var page = new PageRecord(FontSet.OfThisMachine);
        new CardPages(Drawn.Sample(name), FontSet.OfThisMachine).Draw(0, page);

        Assert.Equal([], Placement.Touching(page.Texts).Take(3));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_letters_of_the_card_touch(string name)
    {
        var review = Drawn.Sample(name);
        using var document = Drawn.Open(PdfMaker.Make(new CardPages(review, FontSet.OfThisMachine), FontSet.OfThisMachine, "card", "card", review.AsOf));

        Assert.Empty(Placement.Overlaps(document.GetPage(1).Letters));
    }
}
