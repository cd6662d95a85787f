using NodaTime;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Review;
using RideAudit.Rules;

namespace RideAudit.Tests.Worked;

/// <summary>Folders of riders as common practice meets them, each with an outcome worked out by hand from the method.</summary>
public sealed class WorkedRiderTests
{
    private static readonly LocalDate AsOf = new(2026, 5, 11);

    private static readonly IReadOnlyList<WorkedOutcome> Expected = WorkedOutcome.Read(Repository.Path("testdata", "worked", "expected.txt"));

    public static TheoryData<string> Names => [.. WorkedRiders.All.Select(r => r.Name)];

    [Fact]
    public void The_folders_are_what_the_generator_makes()
    {
        foreach (var rider in WorkedRiders.All)
        {
            var folder = Repository.Path("testdata", "worked", rider.Name);
            if (Repository.Updates)
            {
                Directory.CreateDirectory(folder);
                foreach (var (file, text) in rider.Files())
                    File.WriteAllText(Path.Combine(folder, file), text);
            }
            Assert.Equal(rider.Files().Select(f => f.File).Order(StringComparer.Ordinal), Directory.GetFiles(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
            foreach (var (file, text) in rider.Files())
                Assert.True(text.ReplaceLineEndings("\n") == File.ReadAllText(Path.Combine(folder, file)).ReplaceLineEndings("\n"), $"{rider.Name}/{file}");
        }
    }

    [Fact]
    public void Every_rider_has_an_outcome_and_every_outcome_a_rider() =>
        Assert.Equal(WorkedRiders.All.Select(r => r.Name).Order(StringComparer.Ordinal), Expected.Select(e => e.Name).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Names))]
    public void The_review_is_the_one_worked_out_by_hand(string name)
    {
        var review = Review(name);
        var expected = Expected.Single(e => e.Name == name);
        Assert.Equal((expected.Hours, expected.UncoveredHours), (review.Week.Hours.To(2), review.Week.StressUnknownHours.To(2)));
        Assert.Equal(expected.Days, review.Week.Days.Select(d => d.KindInWords));
        Assert.Equal(expected.Stress, review.Rides.Select(r => Words.OrNull<StressSource>(r.StressFrom)?.Replace(' ', '-') ?? "unknown"));
        var notKept = review.Findings.Where(f => f.Verdict != Verdict.Kept).Select(f => $"{f.Rule} {Words.Of(f.Verdict)}");
        Assert.Equal(expected.NotKept.Select(v => $"{v.Key} {v.Value}").Order(StringComparer.Ordinal), notKept.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Hours_that_no_stress_covers_are_named(string name)
    {
        var review = Review(name);
        Assert.Equal(review.Week.StressUnknownHours > 0, review.Notices.Any(n => n.Problem == "no stress"));
        foreach (var ride in review.Rides.Where(r => r.Stress is null))
            Assert.Contains(ride.File, Assert.Single(review.Notices, n => n.Problem == "no stress").Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void What_is_not_judged_says_why(string name) =>
        Assert.All(Review(name).Findings, f => Assert.Equal(f.Verdict == Verdict.NotJudged, !string.IsNullOrWhiteSpace(f.Reason)));

    [Fact]
    public void Ten_commutes_leave_no_seven_days_of_rest()
    {
        var review = Review("commuter");
        Assert.Contains("two rest and five recovery days", review.Summary.Held);
        Assert.Equal("two rest and five recovery days", review.Findings.Single(f => f.Rule == "rest-days").Figure);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_kept_rule_has_a_figure_beside_its_mark(string name) =>
        Assert.All(Review(name).Findings.Where(f => f.Verdict == Verdict.Kept && f.Rule != "rest-after-load"), f => Assert.False(string.IsNullOrWhiteSpace(f.Figure), f.Rule));

    private static ReviewDocument Review(string name)
    {
        var folder = Repository.Path("testdata", "worked", name);
        var rider = RiderFileReader.Read(File.ReadAllText(Path.Combine(folder, "rider.toml")), "rider.toml").Rider!;
        var content = FolderReader.Read(folder, rider, DateTimeZone.Utc, null, CancellationToken.None);
        Assert.DoesNotContain(content.Notices, n => n.Unusable);
        return ReviewBuilder.Review(content, rider, new ReviewRequest { Today = AsOf, AsOf = AsOf })!;
    }
}
