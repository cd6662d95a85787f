using NodaTime;
using RideAudit.Document;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Review;
using RideAudit.Rules;

namespace RideAudit.Tests.Support;

/// <summary>The review of the demo folder.</summary>
internal static class DemoReview
{
    public static ReviewDocument Build(RuleBook? rules = null) => Build(new LocalDate(2026, 6, 22), rules);

    public static ReviewDocument Build(LocalDate? asOf, RuleBook? rules = null)
    {
        var folder = Repository.Path("testdata", "demo");
        var rider = RiderFileReader.Read(File.ReadAllText(Path.Combine(folder, "rider.toml")), "rider.toml").Rider!;
        var content = FolderReader.Read(folder, rider, DateTimeZone.Utc, null, CancellationToken.None);
        return ReviewBuilder.Review(content, rider, new ReviewRequest { Today = new LocalDate(2026, 11, 24), AsOf = asOf, Rules = rules ?? RuleBook.Standard })!;
    }
}
