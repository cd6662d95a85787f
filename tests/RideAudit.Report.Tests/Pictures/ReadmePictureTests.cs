using RideAudit.Document;
using RideAudit.Raster;
using SkiaSharp;

namespace RideAudit.Report.Tests.Pictures;

/// <summary>The picture in README against page one of the demo's review. RIDEAUDIT_UPDATE=1 writes it anew.</summary>
public sealed class ReadmePictureTests
{
    private const int LargestFile = 400_000;
    private static readonly string Picture = Repository.Path("docs", "images", "page-one.png");

    [Fact]
    public void The_picture_in_README_is_page_one_of_the_demo()
    {
        Assert.Contains("](docs/images/page-one.png)", File.ReadAllText(Repository.Path("README.md")), StringComparison.Ordinal);
        using var drawn = PageOne(DemoReview.Build());

        ApprovedPicture.Check(drawn, Picture, difference => difference.IsTiny);
    }

    [Fact]
    public void A_figure_that_changed_by_a_digit_is_more_than_the_tolerance()
    {
        var review = DemoReview.Build();
        using var one = PageOne(review);
        using var other = PageOne(review with { Week = review.Week with { SplitTolerance = 0.05 } });
        using var ramp = PageOne(review with { Week = review.Week with { RampPerWeek = review.Week.RampPerWeek - 0.1 } });

        Assert.False(Difference.Between(one, other).IsTiny);
        Assert.False(Difference.Between(one, ramp).IsTiny);
    }

    [Fact]
    public void The_picture_in_README_is_quick_to_load() => Assert.InRange(new FileInfo(Picture).Length, 1, LargestFile);

    private static SKBitmap PageOne(ReviewDocument review)
    {
        using var stream = new MemoryStream();
        ReviewPicture.WritePageOne(review, stream, new PageOptions());
        return SKBitmap.Decode(stream.ToArray());
    }
}
