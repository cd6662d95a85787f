using NodaTime;
using RideAudit.Document;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Review;

namespace RideAudit.Tests.Review;

/// <summary>Page one says what makes the week less sure, and does not boast of rules that had nothing to judge.</summary>
public sealed class PageOneWordsTests
{
    private static readonly LocalDate Monday = new(2026, 6, 22);

    [Fact]
    public void A_cut_recording_of_the_judged_week_is_named_beside_the_verdict()
    {
        using var folder = new TempFolder();
        foreach (var file in Directory.GetFiles(Repository.Demo, "2026-06-1*.fit"))
        {
            var bytes = File.ReadAllBytes(file);
            folder.Write(Path.GetFileName(file), file.Contains("group") ? bytes[..20_000] : bytes);
        }
        var review = Build(folder.Path, DemoReview.Rider, new ReviewRequest { Today = Monday, AsOf = Monday });
        Assert.Contains("Wednesday’s recording is incomplete", review.Summary.Subline);
        Assert.DoesNotContain("incomplete", DemoReview.Build().Summary.Subline);
    }

    [Fact]
    public void A_day_that_has_not_been_is_to_come_and_not_rest()
    {
        var asOf = new LocalDate(2026, 6, 18);
        var review = Build(Repository.Demo, DemoReview.Rider, new ReviewRequest { Today = asOf, AsOf = asOf, WeekOf = asOf.PlusDays(-1) });
        Assert.Equal(["rest", "high", "high", "to come", "to come", "to come", "to come"], review.Week.Days.Select(d => d.KindInWords));
    }

    [Fact]
    public void What_held_leaves_out_what_had_nothing_to_judge()
    {
        var review = DemoReview.Build();
        Assert.Contains("three rest and one recovery day", review.Summary.Held);
        Assert.DoesNotContain("growth in small steps", review.Summary.Held);
        Assert.DoesNotContain("a lighter week lately", review.Summary.Held);
        Assert.Equal(12, review.Summary.Kept);
    }

    [Fact]
    public void Hours_that_nobody_planned_are_not_called_planned()
    {
        var rider = DemoReview.Rider;
        var review = Build(
            Repository.Demo, rider with { Plan = rider.Plan with { WeeklyHours = null } }, new ReviewRequest { Today = Monday, AsOf = Monday });
        Assert.True(review.Rider.PlannedHoursFromHistory);
        Assert.DoesNotContain(review.Summary.ToChange, c => c.Title.Contains("planned"));
        Assert.DoesNotContain("planned", review.Summary.Headline);
    }

    [Fact]
    public void An_estimated_threshold_is_said_beside_the_verdict()
    {
        var review = Build(
            Repository.Demo, DemoReview.Rider with { Thresholds = [] }, new ReviewRequest { Today = Monday, AsOf = Monday });
        Assert.Contains("Threshold power is an estimate", review.Summary.Subline);
    }

    private static ReviewDocument Build(string folder, Rider rider, ReviewRequest request) =>
        ReviewBuilder.Review(FolderReader.Read(folder, rider, DateTimeZone.Utc, null, CancellationToken.None), rider, request)!;
}
