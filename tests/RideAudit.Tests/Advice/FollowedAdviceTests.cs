using System.Text.RegularExpressions;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Tests.Coach;
using RideAudit.Tests.Review;
using RideAudit.Tests.Rules;
using RideAudit.Tests.Simulation;
using RideAudit.Units;
using Xunit.Abstractions;

namespace RideAudit.Tests.Advice;

/// <summary>Advice that is followed to the letter keeps its rule: every text is read as it is printed, done to the week, and the week judged again.</summary>
public sealed class FollowedAdviceTests(ITestOutputHelper output)
{
    private const int Weeks = 1200;
    private const int Batches = 4;
    private const int SimulatedSeeds = 25;

    /// <summary>Texts that no drawn week asks for; each has a week of its own.</summary>
    private static readonly string[] Rare = ["Rides of at most", "of them high", "on the hardest one", "nearer the usual"];

    public static TheoryData<int> EachBatch => [.. Enumerable.Range(0, Batches)];

    [Theory]
    [MemberData(nameof(EachBatch))]
    public void What_a_review_of_a_random_week_advises_keeps_the_rule(int batch) =>
        Hold(Enumerable.Range(0, Weeks).Where(seed => seed % Batches == batch).Select(seed => ($"seed {seed}", RandomReviews.Draw(seed))));

    [Fact]
    public void What_a_review_of_a_simulated_week_advises_keeps_the_rule() => Hold(Simulated);

    public static TheoryData<string> RareTexts => [.. RareWeeks.Select(w => w.Text)];

    [Theory]
    [MemberData(nameof(RareTexts))]
    public void A_rare_text_keeps_its_rule_as_well(string text)
    {
        var (_, rule, week) = RareWeeks.Single(w => w.Text == text);
        var finding = Sample.Judge(rule, week);

        Assert.Equal(text, finding.WouldHaveKept!.Plain());
        Assert.Null(FaultIn(text, week, finding));
    }

    [Fact]
    public void Every_text_is_met()
    {
        var texts = Enumerable.Range(0, Weeks / Batches).Select(RandomReviews.Draw).Concat(Simulated.Select(s => s.Item2))
            .SelectMany(r => Texts(r.Document, r.Week)).Select(t => t.Text).Distinct().ToArray();
        Assert.All(
            FollowedAdvice.Patterns.Where(p => !Rare.Any(r => p.Contains(r, StringComparison.Ordinal))),
            pattern => Assert.True(Array.Exists(texts, t => Regex.IsMatch(t, pattern)), pattern));
        Assert.All(FollowedAdvice.Principles.Where(p => !Rare.Any(r => p.Contains(r, StringComparison.Ordinal))), text => Assert.True(texts.Contains(text), text));
    }

    private static IEnumerable<(string, (ReviewDocument Document, WeekUnderReview Week))> Simulated =>
        from fault in Faults.All.Append(TooLow)
        from seed in Enumerable.Range(1, SimulatedSeeds)
        select ($"{fault.Name}, seed {seed}", RiddenWeeks.Review(fault, seed));

    /// <summary>Twenty minutes at 112 % of a threshold that is no longer the rider's.</summary>
    private static Fault TooLow { get; } = new(
        "a threshold too low", TradeWeeks.MiddleLongSaturday, TradeWeeks.MiddleLongSaturday.With(1, Session.Repeats(60, 1, 1200, 112, 0)), "threshold-fresh", Verdict.Watch);

    private static IEnumerable<(string Text, string Rule, WeekUnderReview Week)> RareWeeks =>
    [
        ("Rides of at most 2 h 10 min and 2 h 49 min, one after the other.", "longest-ride-jump",
            Week(7, [.. Before(Ride(-7, RideKind.Endurance, 100)), Ride(1, RideKind.Endurance, 150), Ride(5, RideKind.Endurance, 220)])),
        ("Three hard days fewer, one of them high, ridden easy or left out.", "hard-day-count",
            Week(6, [.. Enumerable.Range(0, 6).Select(day => Ride(day, day % 2 == 0 ? RideKind.High : RideKind.Threshold, 60))])),
        ("The riding of the two easiest days on the hardest one instead.", "monotony",
            Week(5, [.. Enumerable.Range(0, 7).Select(day => Ride(day, RideKind.Endurance, day == 2 ? 40 : day == 4 ? 60 : 42))])),
    ];

    private static RideFigures Ride(int day, RideKind kind, double minutes) => Sample.Ride(RiddenWeeks.Monday.PlusDays(day), kind, minutes, 9);

    private static IEnumerable<RideFigures> Before(RideFigures ride) =>
        Enumerable.Range(0, 6).Select(weeks => ChangedRide.On(ride, ride.Date.PlusDays(-7 * weeks)) with { File = $"{weeks} {ride.File}" });

    private static WeekUnderReview Week(double hours, RideFigures[] rides) => Sample.Review(rides, Sample.Plan(hours));

    private void Hold(IEnumerable<(string Name, (ReviewDocument Document, WeekUnderReview Week) Drawn)> reviews)
    {
        var wrong = new List<string>();
        var followed = 0;
        foreach (var (name, (document, week)) in reviews)
        {
            foreach (var (text, finding) in Texts(document, week))
            {
                followed++;
                if (FaultIn(text, week, finding) is { } fault)
                    wrong.Add($"{name}: {finding.Rule} {finding.Verdict}: {text} ({fault})");
            }
            if (document.SmallestChange is { Changes.IsEmpty: false } change)
                wrong.AddRange(BrokenPromises(change.Sentence.Plain(), week).Select(rule => $"{name}: {change.Sentence} does not keep the {rule} rule"));
        }
        output.WriteLine($"{followed} followed");
        foreach (var line in wrong.Take(80))
            output.WriteLine(line);
        Assert.Empty(wrong);
    }

    /// <summary>What is printed, and a rule's own words, which stand where no change to one ride does.</summary>
    private static IEnumerable<(string Text, Finding Finding)> Texts(ReviewDocument document, WeekUnderReview week) =>
        document.Findings.Concat(RuleBook.Standard.Judge(week)).SelectMany(f => new[] { f.WouldHaveKept, f.Advice }.OfType<string>().Distinct().Select(t => (t.Plain(), f))).DistinctBy(t => (t.Item1, t.f.Rule));

    /// <summary>What is wrong with a text; null where every way of following it keeps the rule.</summary>
    private static string? FaultIn(string text, WeekUnderReview week, Finding finding)
    {
        if (IsNone(text) || FollowedAdvice.Principles.Contains(text))
            return null;
        var weeks = FollowedAdvice.Of(text, week, finding);
        if (weeks is not { Count: > 0 })
            return "nobody can do what it says";
        var rule = RuleBook.Standard.Rules.Single(r => r.Id == finding.Rule);
        return weeks.Where(w => !Keeps(rule, w)).Select(w => rule.Judge(w)).FirstOrDefault() is { } still ? $"then {still.Verdict}: {still.Sentence}" : null;
    }

    private static IEnumerable<string> BrokenPromises(string sentence, WeekUnderReview week)
    {
        var after = FollowedChange.Of(sentence, week)!;
        return FollowedChange.Keeps(sentence).Where(name => !Keeps(RuleBook.Standard.Rules.Single(r => r.ShortName == name), after));
    }

    /// <summary>Kept; or nothing stands against it but what the advice does not speak of: a ride that nobody can rate, a week that goes on, a history too short for other rides.</summary>
    private static bool Keeps(Rule rule, WeekUnderReview week)
    {
        var judged = new JudgedWeek(week);
        var call = rule.Decide(judged);
        return call.Verdict == Verdict.Kept
            || (call.Verdict == Verdict.NotJudged && (!week.Week.Finished || rule.Id == "longest-ride-jump" || judged.HasUnrated(dayBefore: true)));
    }

    private static bool IsNone(string text) =>
        text is "Nothing else in one ride, without costing another rule."
        || (text.StartsWith("No change to one or two rides would have kept the ", StringComparison.Ordinal) && text.EndsWith(" without costing another rule.", StringComparison.Ordinal));
}
