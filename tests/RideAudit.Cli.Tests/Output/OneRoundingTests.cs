using NodaTime;
using RideAudit.Cli.Tests.Support;
using RideAudit.Cli.Tests.Trust;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Review;
using RideAudit.Rules;

namespace RideAudit.Cli.Tests.Output;

/// <summary>Pages, summary and plain text round the document's unrounded figure once, and so say the same.</summary>
public sealed class OneRoundingTests
{
    private const string AsOf = "2026-05-11";

    public static TheoryData<string> Riders =>
        [.. Directory.EnumerateDirectories(Repository.Path("testdata", "worked")).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Riders))]
    public void The_figures_of_week_and_rides_read_the_same_on_the_page_in_the_summary_and_in_the_plain_text(string rider)
    {
        var rides = Repository.Path("testdata", "worked", rider);
        var review = Document(rides);
        var week = review.Week;
        using var folder = new TempFolder();
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal(0, shell.Run("review", rides, "--as-of", AsOf, "--pdf", "review.pdf"));
        using var plain = new TestShell(folder: folder.Path);
        Assert.Equal(0, plain.Run("review", rides, "--as-of", AsOf, "--text", "--no-pdf"));
        string[] said = [PdfText.Shown(File.ReadAllBytes(folder.At("review.pdf"))), shell.Out, plain.Out];
        string[] figures = week.RideCount == 0
            ? [Shown.Number(week.ChronicLoad, 0)]
            : [Shown.Number(week.Hours, 1), Shown.Number(week.Stress, 0), Shown.Number(week.ChronicLoad, 0), Shown.Length(week.LongestRideSeconds)];
        string[] ofRides = [.. review.Rides.SelectMany(r => new[] { Shown.Length(r.DurationSeconds), r.Stress is { } stress ? Shown.Number(stress, 0) : "–" })];
        Assert.All([said[0], said[2]], s => Assert.All(ofRides, f => Assert.Contains(Bare(f), Bare(s), StringComparison.Ordinal)));
        Assert.All(said, s => Assert.All(figures, f => Assert.Contains(Bare(f), Bare(s), StringComparison.Ordinal)));
    }

    private static ReviewDocument Document(string rides)
    {
        var rider = RiderFileReader.Read(File.ReadAllText(Path.Combine(rides, "rider.toml")), "rider.toml").Rider!;
        var asOf = NodaTime.Text.LocalDatePattern.Iso.Parse(AsOf).Value;
        var content = FolderReader.Read(rides, rider, DateTimeZone.Utc, null, CancellationToken.None);
        return ReviewBuilder.Review(content, rider, new ReviewRequest { Today = asOf, AsOf = asOf, Rules = RuleBook.Standard })!;
    }

    private static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
