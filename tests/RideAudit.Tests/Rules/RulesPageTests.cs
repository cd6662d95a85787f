using System.Text.RegularExpressions;
using RideAudit.Plan;
using RideAudit.Rules;

namespace RideAudit.Tests.Rules;

/// <summary>Keeps docs/rules.md in step with the rules.</summary>
public partial class RulesPageTests
{
    private static readonly string Page = File.ReadAllText(Repository.Path("docs", "rules.md"));

    [Fact]
    public void The_page_and_the_rule_book_have_the_same_rules_in_the_order_of_the_method()
    {
        Assert.Equal(RuleOrder.Ids, RuleBook.Standard.All.Select(r => r.Id));
        Assert.Equal(RuleOrder.Ids, Heading().Matches(Page).Select(m => m.Groups["id"].Value));
        Assert.Equal(Enumerable.Range(1, 18), Heading().Matches(Page).Select(m => int.Parse(m.Groups["number"].Value)));
    }

    [Fact]
    public void The_page_says_evidence_source_and_limits_of_every_rule()
    {
        var plan = Sample.Plan();
        Assert.All(RuleBook.Standard.All, rule =>
        {
            var section = SectionOf(rule.Id);
            Assert.Contains($"Evidence: {Words(rule.Evidence)}.", section, StringComparison.Ordinal);
            Assert.Contains($"Source: {rule.Source}.", section, StringComparison.Ordinal);
            var named = LimitLine().Match(section).Groups["names"].Value;
            Assert.Equal(rule.LimitsOf(plan).Select(l => $"`{l.Name}`"), named.Split(", "));
        });
    }

    [Fact]
    public void The_page_lists_every_limit_with_its_range_and_meaning()
    {
        var rows = LimitRow().Matches(Page[Page.IndexOf("\n## Limits\n", StringComparison.Ordinal)..]);

        Assert.Equal(
            LimitCatalogue.All.Select(l => FormattableString.Invariant($"{l.Name} | {l.Unit} | {l.Least} to {l.Most} | {l.Meaning}")),
            rows.Select(r => $"{r.Groups["name"].Value} | {r.Groups["unit"].Value} | {r.Groups["range"].Value} | {r.Groups["meaning"].Value}"));
    }

    [Fact]
    public void The_page_has_the_default_of_every_limit()
    {
        var limits = new Limits();
        foreach (Match row in LimitRow().Matches(Page[Page.IndexOf("\n## Limits\n", StringComparison.Ordinal)..]))
        {
            var written = row.Groups["default"].Value;
            if (written is "by tier")
                continue;
            var value = written == "1/3" ? 1.0 / 3 : double.Parse(written);
            Assert.Equal(value, LimitCatalogue.ValueOf(limits, row.Groups["name"].Value));
        }
    }

    [Theory]
    [InlineData(Tier.Low, 1)]
    [InlineData(Tier.Middle, 2)]
    [InlineData(Tier.High, 3)]
    [InlineData(Tier.VeryHigh, 4)]
    public void The_table_of_tiers_agrees_with_the_limits(Tier tier, int column)
    {
        var limits = Limits.For(tier, Experience.Regular, null, new TrainingPlan());

        Assert.Equal(Shown("rest_days_at_least"), limits.RestDaysAtLeast.ToString());
        Assert.Equal(double.Parse(Shown("intended_low_share")), limits.IntendedLowShare);
        Assert.Equal(double.Parse(Shown("split_tolerance")), limits.SplitTolerance);
        Assert.EndsWith(limits.LongRideHours.ToString(), Shown("long_ride_h"), StringComparison.Ordinal);
        Assert.Equal(Shown("intended_easy_session_share"), limits.IntendedEasySessionShare?.ToString("0.00") ?? "not set");

        string Shown(string name) => Regex.Match(Page, $@"^\| `{name}` \|(.*)\|$", RegexOptions.Multiline).Groups[1].Value.Split('|')[column - 1].Trim();
    }

    [Fact]
    public void Every_rule_can_say_what_it_asks_for_any_plan()
    {
        double?[] hours = [null, 4, 6.5, 10, 20];
        Assert.All(RuleBook.Standard.All, rule => Assert.All(hours, h =>
        {
            var asked = rule.Ask(Sample.Plan(h));
            Assert.EndsWith(".", asked, StringComparison.Ordinal);
            Assert.True(char.IsUpper(asked[0]) || char.IsDigit(asked[0]));
        }));
    }

    [Fact]
    public void Rules_drawn_from_studies_of_runners_say_so()
    {
        string[] runners = ["weekly-growth", "longest-ride-jump"];
        Assert.All(RuleBook.Standard.All.Where(r => runners.Contains(r.Id)), r => Assert.Contains("of runners, not of cyclists", r.Source, StringComparison.Ordinal));
    }

    private static string SectionOf(string id)
    {
        var start = Page.IndexOf($"`{id}`\n", Page.IndexOf("\n## 1. ", StringComparison.Ordinal), StringComparison.Ordinal);
        return Page[start..Page.IndexOf("\n## ", start, StringComparison.Ordinal)];
    }

    private static string Words(Evidence evidence) => evidence switch
    {
        Evidence.PublishedStudy => "published study",
        Evidence.Handbook => "handbook",
        _ => "common practice",
    };

    [GeneratedRegex(@"^## (?<number>\d+)\. `(?<id>[a-z-]+)`$", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex(@"^Limits: (?<names>.*)\.$", RegexOptions.Multiline)]
    private static partial Regex LimitLine();

    [GeneratedRegex(@"^\| `(?<name>\w+)` \| (?<unit>[^|]+) \| (?<default>[^|]+) \| (?<range>[^|]+) \| (?<meaning>[^|]+) \|$", RegexOptions.Multiline)]
    private static partial Regex LimitRow();
}
