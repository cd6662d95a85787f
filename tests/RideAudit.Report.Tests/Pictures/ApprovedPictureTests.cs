using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Raster;
using RideAudit.Report.Fonts;
using RideAudit.Report.Pages;
using RideAudit.Report.Roster;
using SkiaSharp;

namespace RideAudit.Report.Tests.Pictures;

/// <summary>Pages against pictures that were looked at and approved.</summary>
public sealed class ApprovedPictureTests
{
    private const float Scale = 0.5f;

    // No font of the machine is asked, so that every machine draws the same.
    private static readonly FontSet Bare = new(new SystemFonts([]));

    public static IEnumerable<object[]> Pages =>
        SampleReviews.All.Keys.Select(name => new object[] { name, 1 }).Concat([["middle", 2], ["middle", 3], ["new-rider", 3], ["event", 2], ["event", 3], ["heart-rate-only", 3]]);

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_looks_as_approved(string name, int page)
    {
        using var drawn = Draw(Drawn.Sample(name), Drawn.PaperOf(name), page);

        ApprovedPicture.Check(drawn, $"{name}-{page}");
    }

    [Theory]
    [InlineData("forty", 1)]
    [InlineData("forty", 2)]
    [InlineData("long-labels", 1)]
    public void A_page_of_a_roster_looks_as_approved(string name, int page)
    {
        var pages = new RosterPages(SampleRosters.All[name](), new PageOptions(), Bare);
        using var drawn = ReviewPicture.Draw(pages, page - 1, Scale, Bare);

        ApprovedPicture.Check(drawn, $"roster-{name}-{page}");
    }

    [Fact]
    public void A_change_of_one_figure_is_seen()
    {
        var review = SampleReviews.Middle();
        using SKBitmap one = Draw(review, Paper.A4, 1), other = Draw(review with { Week = review.Week with { Hours = 7.3 } }, Paper.A4, 1);

        Assert.NotEqual(0, Difference.Between(one, other).MeanLevels);
    }

    [Fact]
    public void A_verdict_that_turned_is_more_than_the_tolerance()
    {
        var review = SampleReviews.Middle();
        ImmutableArray<SpanEntry> spans = [.. review.Week.Spans.Select(span => span with { Verdict = Rules.Verdict.Kept })];
        using var one = Draw(review, Paper.A4, 1);
        using var other = Draw(review with { Week = review.Week with { Spans = spans }, Summary = review.Summary with { Headline = "A week as planned." } }, Paper.A4, 1);

        Assert.False(Difference.Between(one, other).IsSmall);
    }

    [Fact]
    public void The_picture_of_page_one_is_twice_the_paper_in_pixels()
    {
        using var stream = new MemoryStream();
        ReviewPicture.WritePageOne(SampleReviews.Middle(), stream, new PageOptions());
        using var picture = SKBitmap.Decode(stream.ToArray());

        Assert.Equal((1191, 1684), (picture.Width, picture.Height));
        Assert.Equal(SKColors.White, picture.GetPixel(20, 20));
    }

    [Fact]
    public void A_scale_out_of_range_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ReviewPicture.WritePageOne(SampleReviews.Middle(), Stream.Null, new PageOptions(), 0));

    private static SKBitmap Draw(ReviewDocument review, Paper paper, int page) =>
        ReviewPicture.Draw(new ReviewPages(review, new PageOptions { Paper = paper }, Bare, RideMaker.TracesOf(review)), page - 1, Scale, Bare);
}
