using NodaTime;
using RideAudit.Document;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Review;
using RideAudit.Rules;

namespace RideAudit.Testing;

/// <summary>The review of the demo folder.</summary>
public static class DemoReview
{
    /// <summary>The day after the demo's last week.</summary>
    public static LocalDate AsOf { get; } = new(2026, 6, 22);

    public static Rider Rider => RiderFileReader.Read(File.ReadAllText(Path.Combine(Repository.Demo, "rider.toml")), "rider.toml").Rider!;

    public static ReviewDocument Build(RuleBook? rules = null) => Build(AsOf, rules);

    public static ReviewDocument Build(LocalDate? asOf, RuleBook? rules = null)
    {
        var rider = Rider;
        var content = FolderReader.Read(Repository.Demo, rider, DateTimeZone.Utc, null, CancellationToken.None);
        return ReviewBuilder.Review(content, rider, new ReviewRequest { Today = new LocalDate(2026, 11, 24), AsOf = asOf, Rules = rules ?? RuleBook.Standard })!;
    }
}
