using NodaTime;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Review;
using SkiaSharp;

namespace RideAudit.Report.Tests.Pictures;

/// <summary>The picture in README against page one of the demo's review. RIDEAUDIT_UPDATE=1 writes it anew.</summary>
public sealed class ReadmePictureTests
{
    private const int LargestFile = 400_000;
    private static readonly string Picture = Path.Combine(Repository.Root, "docs", "images", "page-one.png");

    [Fact]
    public void The_picture_in_README_is_page_one_of_the_demo()
    {
        Assert.Contains("](docs/images/page-one.png)", File.ReadAllText(Path.Combine(Repository.Root, "README.md")), StringComparison.Ordinal);
        using SKBitmap drawn = PageOne();

        ApprovedPicture.Check(drawn, Picture, Difference.Between);
    }

    [Fact]
    public void The_picture_in_README_is_quick_to_load() => Assert.InRange(new FileInfo(Picture).Length, 1, LargestFile);

    private static SKBitmap PageOne()
    {
        string folder = Path.Combine(Repository.Root, "testdata", "demo");
        Rider rider = RiderFileReader.Read(File.ReadAllText(Path.Combine(folder, "rider.toml")), "rider.toml").Rider!;
        FolderContent rides = FolderReader.Read(folder, rider, DateTimeZone.Utc, null, CancellationToken.None);
        var asOf = new LocalDate(2026, 6, 22);
        ReviewDocument review = ReviewBuilder.Review(rides, rider, new ReviewRequest { Today = asOf, AsOf = asOf })!;
        using var stream = new MemoryStream();
        ReviewPicture.WritePageOne(review, stream, new PageOptions());
        return SKBitmap.Decode(stream.ToArray());
    }
}
