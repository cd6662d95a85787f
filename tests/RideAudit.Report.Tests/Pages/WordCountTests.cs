using NodaTime;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Review;

namespace RideAudit.Report.Tests.Pages;

/// <summary>A review is shared when it is short.</summary>
public sealed class WordCountTests
{
    private const int FewestPages = 3;
    private const int MostWords = 900;
    private const int MostWordsOfAny = 1400;

    [Fact]
    public void The_median_of_the_worked_weeks_is_three_pages_and_under_nine_hundred_words()
    {
        (string Name, int Pages, int Words)[] counted =
        [
            .. Directory.GetDirectories(Repository.Path("testdata", "worked")).Order(StringComparer.Ordinal).Select(folder => Count(folder, new LocalDate(2026, 5, 11))),
            Count(Repository.Demo, DemoReview.AsOf),
        ];
        var told = string.Join('\n', counted.Select(one => $"{one.Name}: {one.Pages} pages, {one.Words} words"));

        Assert.True(Median(counted.Select(one => one.Pages)) == FewestPages, told);
        Assert.True(Median(counted.Select(one => one.Words)) < MostWords, told);
        Assert.True(counted.All(one => one.Pages <= FewestPages && one.Words < MostWordsOfAny), told);
    }

    private static int Median(IEnumerable<int> values)
    {
        int[] ordered = [.. values.Order()];
        return ordered[ordered.Length / 2];
    }

    // A word is what white space parts: figures, units and axis labels count as words.
    private static (string Name, int Pages, int Words) Count(string folder, LocalDate asOf)
    {
        var rider = RiderFileReader.Read(File.ReadAllText(Path.Combine(folder, "rider.toml")), "rider.toml").Rider!;
        var content = FolderReader.Read(folder, rider, DateTimeZone.Utc, null, CancellationToken.None);
        var (review, traces) = ReviewBuilder.ReviewWithTraces(content, rider, new ReviewRequest { Today = asOf, AsOf = asOf })!.Value;
        using var stream = new MemoryStream();
        ReviewPdf.Write(review, stream, new PageOptions(), traces);
        using var document = Drawn.Open(stream.ToArray());
        return (Path.GetFileName(folder), document.NumberOfPages, document.GetPages().Sum(page => Drawn.TextOf(page).Split(' ').Length));
    }
}
