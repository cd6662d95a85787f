using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using NodaTime;
using RideAudit.Document;
using RideAudit.Document.Json;

namespace RideAudit.Tests.Review;

/// <summary>The JSON keeps its published shape: docs/review.schema.json, and the names that were promised.</summary>
public sealed class ContractTests
{
    private static readonly ReviewDocument Demo = DemoReview.Build();

    [Fact]
    public void The_demo_review_is_valid_against_the_published_schema()
    {
        var schema = JsonSchema.FromFile(Repository.Path("docs", "review.schema.json"));
        var result = schema.Evaluate(JsonDocument.Parse(ReviewJson.Write(Demo)).RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        var errors = (result.Details ?? []).Where(d => d.Errors is not null).SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation}: {e.Value}"));
        Assert.True(result.IsValid, string.Join('\n', errors));
    }

    [Theory]
    [InlineData("", "schema as_of rider week history rides findings smallest_change notices")]
    [InlineData("rider", "label tier experience time_zone")]
    [InlineData("week", "starts_on iso_week finished hours ride_count stress stress_unknown_hours work_kj band_seconds zone_seconds split_by_time split_by_session polarization_index structure intended_low_share longest_ride_seconds other_activity_hours exception acute_load chronic_load ramp_per_week acute_chronic_ratio settling_in monotony strain days")]
    [InlineData("week.days.0", "date kind hours stress rides exception")]
    [InlineData("week", "planned planned_and_ridden")]
    [InlineData("week.planned", "hours stress sessions")]
    [InlineData("week.planned.sessions.0", "date kind minutes session note")]
    [InlineData("week.planned_and_ridden.1", "planned rides ridden_on outcomes sentence")]
    [InlineData("week.planned_and_ridden.1.planned", "date kind minutes session")]
    [InlineData("week.days.0", "planned")]
    [InlineData("history.0", "starts_on hours stress band_seconds chronic_load ramp_per_week")]
    [InlineData("rides.0", "file parts starts_at duration_seconds elapsed_seconds sport kind mean_power_w normalised_power_w intensity_ratio stress stress_from work_kj threshold_power_w threshold_from band_seconds zone_seconds mean_heart_rate_bpm heart_rate_drift_percent power_coverage heart_rate_coverage partial long_enough kind_from note bout_count bout_seconds")]
    [InlineData("findings.0", "rule verdict sentence would_have_kept reason limits occurrences evidence source weeks_in_a_row set_aside")]
    [InlineData("findings.0.occurrences.0", "verdict dates rides numbers")]
    [InlineData("smallest_change", "changes keeps sentence")]
    [InlineData("smallest_change.changes.0", "kind ride from to minutes")]
    public void A_promised_name_is_there(string path, string names)
    {
        var node = JsonNode.Parse(ReviewJson.Write(Demo));
        foreach (var step in path.Split('.', StringSplitOptions.RemoveEmptyEntries))
            node = int.TryParse(step, out var index) ? node![index] : node![step];
        foreach (var name in names.Split(' '))
            Assert.True(node!.AsObject().ContainsKey(name), $"{path}.{name}");
    }

    [Fact]
    public void The_same_input_gives_the_same_document_to_the_byte() =>
        Assert.Equal(ReviewJson.Write(Demo), ReviewJson.Write(DemoReview.Build()));

    [Fact]
    public void A_folder_without_a_date_judges_the_last_week_ridden_and_says_so()
    {
        var review = DemoReview.Build(asOf: null);
        Assert.Equal(new LocalDate(2026, 6, 22), review.AsOf);
        Assert.Equal(new LocalDate(2026, 6, 15), review.Week.StartsOn);
        Assert.Contains(review.Notices, n => n.Sentence.Contains("the last week ridden is judged"));
    }

    [Fact]
    public void Every_rule_has_one_finding_in_the_order_of_the_method() =>
        Assert.Equal(RideAudit.Rules.RuleBook.Standard.All.Select(r => r.Id), Demo.Findings.Select(f => f.Rule));
}
