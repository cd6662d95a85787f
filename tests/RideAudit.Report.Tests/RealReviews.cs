using System.Collections.Concurrent;
using NodaTime;
using RideAudit.Document;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Review;

namespace RideAudit.Report.Tests;

/// <summary>Reviews of the folders that lie beside the tests: the worked riders and the demo.</summary>
internal static class RealReviews
{
    private const string Demo = "demo";
    private static readonly ConcurrentDictionary<string, (ReviewDocument Review, ReviewTraces Traces)> Made = new(StringComparer.Ordinal);

    /// <summary>Their names.</summary>
    public static IEnumerable<string> Names =>
        Directory.GetDirectories(Repository.Path("testdata", "worked")).Select(folder => Path.GetFileName(folder)).Order(StringComparer.Ordinal).Append(Demo);

    /// <summary>A review.</summary>
    public static ReviewDocument Of(string name) => WithTraces(name).Review;

    /// <summary>A review and what its ride strips draw.</summary>
    public static (ReviewDocument Review, ReviewTraces Traces) WithTraces(string name) => Made.GetOrAdd(name, Make);

    /// <summary>A review's pages.</summary>
    public static byte[] Pdf(string name, bool appendix = false)
    {
        var (review, traces) = WithTraces(name);
        using var stream = new MemoryStream();
        ReviewPdf.Write(review, stream, new PageOptions { Appendix = appendix }, traces);
        return stream.ToArray();
    }

    private static (ReviewDocument, ReviewTraces) Make(string name)
    {
        var folder = name == Demo ? Repository.Demo : Repository.Path("testdata", "worked", name);
        var asOf = name == Demo ? DemoReview.AsOf : new LocalDate(2026, 5, 11);
        var rider = RiderFileReader.Read(File.ReadAllText(Path.Combine(folder, "rider.toml")), "rider.toml").Rider!;
        var content = FolderReader.Read(folder, rider, DateTimeZone.Utc, null, CancellationToken.None);
        return ReviewBuilder.ReviewWithTraces(content, rider, new ReviewRequest { Today = asOf, AsOf = asOf })!.Value;
    }
}
