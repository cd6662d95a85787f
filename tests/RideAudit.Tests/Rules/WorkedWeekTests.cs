using RideAudit.Rules;
using RideAudit.Rules.Changes;

namespace RideAudit.Tests.Rules;

/// <summary>The weeks of testdata/weeks, as common practice draws them: each lists every verdict that is not kept.</summary>
public class WorkedWeekTests
{
    public static TheoryData<string> Files { get; } =
        [.. Directory.GetFiles(Repository.Path("testdata", "weeks"), "*.week").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_worked_week_is_judged_as_its_file_says(string name)
    {
        var week = Read(name);
        var findings = RuleBook.Standard.Judge(week.Review());

        var expected = RuleBook.Standard.All.Select(r => $"{r.Id}: {week.Verdicts.GetValueOrDefault(r.Id, OfAnOrdinaryWeek(r.Id))}");
        Assert.Equal(expected, findings.Select(f => $"{f.Rule}: {Word(f.Verdict)}"));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void A_worked_week_has_the_smallest_change_its_file_says(string name)
    {
        var week = Read(name);
        var review = week.Review();

        var change = ChangeSearch.Find(review, RuleBook.Standard.Judge(review));

        Assert.Equal(week.SmallestChange, change?.Sentence.Plain());
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_finding_is_complete(string name)
    {
        foreach (var finding in RuleBook.Standard.Judge(Read(name).Review()))
        {
            Assert.EndsWith(".", finding.Sentence, StringComparison.Ordinal);
            Assert.Equal(finding.Verdict == Verdict.NotJudged, finding.Reason is not null);
            Assert.Equal(finding.Verdict is Verdict.Watch or Verdict.Broken, finding.WouldHaveKept is not null);
            Assert.NotEmpty(finding.Source);
            Assert.NotEmpty(finding.Limits);
            if (finding.Verdict is Verdict.Watch or Verdict.Broken)
                Assert.Equal(finding.Verdict, finding.Occurrences.Max(o => o.Verdict));
            else
                Assert.Empty(finding.Occurrences);
        }
    }

    [Fact]
    public void Every_tier_and_experience_has_a_week_that_keeps_everything()
    {
        var expected =
            from tier in new[] { "low", "middle", "high", "very-high" }
            from experience in new[] { "new", "regular", "racing" }
            select $"keeps-{tier}-{experience}";
        Assert.All(expected, name =>
        {
            var verdicts = Read(name).Verdicts.Select(v => $"{v.Key}: {v.Value}");
            Assert.Equal(name.StartsWith("keeps-low", StringComparison.Ordinal) ? ["lighter-week: not judged"] : [], verdicts);
        });
    }

    [Fact]
    public void Every_rule_has_a_week_made_to_break_it()
    {
        string[] neverBroken = ["weekly-growth", "longest-ride-jump", "threshold-fresh"];
        Assert.All(RuleBook.Standard.All, rule =>
        {
            var worst = neverBroken.Contains(rule.Id) ? "watch" : "broken";
            Assert.Equal(worst, Read($"breaks-{rule.Id}").Verdicts[rule.Id]);
        });
    }

    /// <summary>Without days out there is nothing to come back from.</summary>
    private static string OfAnOrdinaryWeek(string rule) => rule == "return-to-riding" ? "not judged" : "kept";

    private static WorkedWeek Read(string name) => WorkedWeek.Read(Repository.Path("testdata", "weeks", name + ".week"));

    private static string Word(Verdict verdict) => verdict == Verdict.NotJudged ? "not judged" : verdict.ToString().ToLowerInvariant();
}
