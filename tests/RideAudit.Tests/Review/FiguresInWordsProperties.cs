using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using FsCheck;
using FsCheck.Fluent;
using RideAudit.Document;
using RideAudit.Document.Json;
using RideAudit.Formatting;
using RideAudit.Rules;
using RideAudit.Tests.Rules;

namespace RideAudit.Tests.Review;

/// <summary>A figure reads the same wherever it stands: every sentence has the one rounding of the document's unrounded figure.</summary>
public sealed partial class FiguresInWordsProperties
{
    [Fact]
    public void A_sentence_has_the_one_rounding_of_the_documents_figure() => Check(review =>
    {
        var week = review.Week;
        Says(review, "weekly-hours", week.RideCount == 0 ? "No ride" : $"{Shown.Hours(week.Hours)} ridden, {Shown.Share(week.Hours / Planned(review))} of ");
        Says(review, "weekly-growth", Shown.Hours(week.Hours) + ", ");
        Says(review, "chronic-ramp", $" by {Shown.Points(Math.Abs(week.RampPerWeek), 1)}, ");
        Says(review, "monotony", $" {Shown.Number(week.Monotony, 1)} times ");
        Says(review, "endurance-volume", $"{Shown.Hours(week.BandSeconds.Low / 3600)} of ");
        Says(review, "intensity-split", $"{Shown.Share(week.SplitByTime?.Low)} of the time");
        if (week.SplitByTime is { } split)
            Assert.Contains($"By time {Shown.Share(split.Low)} low, {Shown.Share(split.Middle)} middle, {Shown.Share(split.High)} high", review.Summary.SplitSentence);
        if (Of(review, "hard-day-spacing") is { Verdict: Verdict.Broken or Verdict.Watch } spacing)
            Assert.Contains(week.Spans, s => s.Verdict == spacing.Verdict && spacing.Sentence.Contains($", {Shown.Hours(s.Hours, 0)} from the end", StringComparison.Ordinal));
        foreach (var held in review.Summary.Held.Where(h => h.EndsWith(" ridden", StringComparison.Ordinal)))
            Assert.Equal($"{Shown.Hours(week.Hours)} ridden", held);
    });

    [Fact]
    public void The_JSON_has_the_one_rounding_of_the_documents_figure() => Check(review =>
    {
        var json = JsonNode.Parse(ReviewJson.Write(review))!;
        Assert.Equal(review.Week.Hours.To(2), json["week"]!["hours"]!.GetValue<double>());
        Assert.Equal(review.Week.Stress.To(1), json["week"]!["stress"]!.GetValue<double>());
        Assert.Equal(review.Week.LongestRideSeconds.To(0), json["week"]!["longest_ride_seconds"]!.GetValue<double>());
        Assert.Equal(review.Week.ZoneSeconds.Select(z => z.To(0)), json["week"]!["zone_seconds"]!.AsArray().Select(z => z!.GetValue<double>()));
        foreach (var (ride, row) in review.Rides.Zip(json["rides"]!.AsArray()))
        {
            Assert.Equal(ride.Stress.To(1), row!["stress"]?.GetValue<double>());
            Assert.Equal(ride.IntensityRatio.To(3), row["intensity_ratio"]?.GetValue<double>());
            Assert.Equal(ride.PowerCoverage.To(3), row["power_coverage"]!.GetValue<double>());
        }
    });

    [Fact]
    public void A_figure_never_parts_from_its_unit_and_agrees_with_its_noun() => Check(review =>
    {
        foreach (var text in Texts(review))
        {
            Assert.DoesNotMatch(LooseUnit(), text);
            Assert.DoesNotMatch(OneOfMany(), text);
            Assert.DoesNotMatch(ManyOfOne(), text);
            Assert.DoesNotContain("one ride of", text.Contains(" in all", StringComparison.Ordinal) ? text : "");
        }
    });

    [Fact]
    public void Rules_of_any_week_and_plan_agree_with_their_nouns() =>
        FsCheck.Check.One(Config.QuickThrowOnFailure.WithMaxTest(60), Prop.ForAll(RuleProperties.Rides, RuleProperties.Plans, (rides, plan) =>
        {
            foreach (var finding in RuleBook.Standard.Judge(Sample.Review(rides, plan)))
            {
                foreach (var text in Texts(finding))
                {
                    Assert.DoesNotMatch(LooseUnit(), text);
                    Assert.DoesNotMatch(OneOfMany(), text);
                    Assert.DoesNotMatch(ManyOfOne(), text);
                }
            }
        }));

    private static IEnumerable<string> Texts(ReviewDocument review) =>
    [
        review.Summary.Headline, review.Summary.Subline, review.Summary.SplitSentence, .. review.Summary.Held,
        .. review.Summary.ToChange.SelectMany(c => new[] { c.Title, c.Detail }), .. review.Findings.SelectMany(Texts), .. review.Notices.Select(n => n.Sentence),
    ];

    private static IEnumerable<string> Texts(Finding finding) =>
    [
        finding.Sentence, finding.WouldHaveKept ?? "", finding.Advice ?? "", finding.Headline ?? "", finding.Held ?? "",
        .. finding.Limits.Select(l => l.Text), .. finding.Occurrences.SelectMany(o => o.Numbers).Select(n => n.Text),
    ];

    private static double Planned(ReviewDocument review) => review.Rider.PlannedHours ?? double.NaN;

    private static Finding Of(ReviewDocument review, string rule) => review.Findings.Single(f => f.Rule == rule);

    private static void Says(ReviewDocument review, string rule, string words)
    {
        if (Of(review, rule) is { Verdict: not Verdict.NotJudged } finding)
            Assert.Contains(words, finding.Sentence, StringComparison.Ordinal);
    }

    private static void Check(Action<ReviewDocument> holds) => FsCheck.Check.One(
        Config.QuickThrowOnFailure.WithMaxTest(40),
        Prop.ForAll(ReviewProperties.AnyFolder, folder => holds(ReviewProperties.Review(folder.Select(r => r.ToRecording()), ReviewProperties.RiderAt(240)))));

    [GeneratedRegex(@"\d (?:h|min|s|W|%|bpm|kJ|km|points?)(?![\w])")]
    private static partial Regex LooseUnit();

    [GeneratedRegex(@"(?<![\w.,\u2212])(?:1|[Oo]ne)[ \u00A0](?:(?:high|hard|threshold|rest|more|easy|other easy|ordinary)[ \u00A0])?(?:rules|rides|days|weeks|sessions|points|times)\b")]
    private static partial Regex OneOfMany();

    [GeneratedRegex(@"(?<![\w.,:])(?:\d{2,}|[2-9]|[Tt]wo|[Tt]hree|[Ff]our|[Ff]ive|[Ss]ix|[Ss]even)[ \u00A0](?:(?:high|hard|threshold|rest|more|easy|other easy|ordinary)[ \u00A0])?(?:rule|ride|day|week|session|point)\b(?!-)")]
    private static partial Regex ManyOfOne();
}
