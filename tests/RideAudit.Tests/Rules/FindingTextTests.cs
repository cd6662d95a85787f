using System.Globalization;
using System.Text;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Tests.Rules;

/// <summary>All that the rules say of the worked weeks, word by word and number by number, as a reader has approved it.</summary>
public sealed class FindingTextTests
{
    private static readonly (string Name, WeekUnderReview Review)[] Weeks =
        [.. Directory.GetFiles(Repository.Path("testdata", "weeks"), "*.week").Order(StringComparer.Ordinal).SelectMany(Variants)];

    public static TheoryData<int> Seeds { get; } = [.. Enumerable.Range(0, 40)];

    public static TheoryData<string> Rules { get; } = [.. RuleBook.Standard.All.Select(r => r.Id)];

    public static TheoryData<string> Names { get; } = [.. Weeks.Select(w => w.Name)];

    /// <summary>Each line only once.</summary>
    [Theory]
    [MemberData(nameof(Rules))]
    public void What_a_rule_says_of_the_worked_weeks_is_what_was_approved(string id)
    {
        var rule = RuleBook.Standard.All.Cast<Rule>().Single(r => r.Id == id);
        var said = new StringBuilder();
        said.Append(CultureInfo.InvariantCulture, $"{rule.Name}, {rule.ShortName}, {(rule.IsChangeSought ? "a change is sought" : "no change is sought")}\n");
        var known = new HashSet<string>();
        foreach (var (name, review) in Weeks)
        {
            var finding = rule.Judge(review);
            var lines = Lines(finding).Prepend($"asks: {rule.Ask(review.Plan)}").Concat(Effects(rule, finding)).Where(known.Add).ToArray();
            if (lines.Length > 0)
                said.Append(CultureInfo.InvariantCulture, $"{name}\n{string.Concat(lines.Select(l => $"  {l}\n"))}");
        }
        Golden.Check("findings.txt", id, said.ToString());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void What_would_have_kept_the_rules_is_what_was_approved(string name)
    {
        var review = Weeks.Single(w => w.Name == name).Review;
        var findings = RuleBook.Standard.Judge(review);
        var change = ChangeSearch.Find(review, findings);
        var kept = Remedies.With(findings, change, review, RuleBook.Standard).Where(f => f.WouldHaveKept is not null).Select(f => $"  {f.Rule}: {f.WouldHaveKept}\n");
        Golden.Check("changes.txt", name, change is null ? "nothing\n" : $"{change.Sentence} {string.Join(' ', change.Keeps)}\n{string.Concat(kept)}");
    }

    /// <summary>The verdicts, what is said of those that are not kept, and the smallest change.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void What_the_rules_say_of_generated_weeks_is_what_was_approved(int seed)
    {
        var said = new StringBuilder();
        foreach (var review in Enumerable.Range(5 * seed, 5).Select(GeneratedWeek.Of))
        {
            var findings = RuleBook.Standard.Judge(review);
            var change = ChangeSearch.Find(review, findings);
            said.Append(CultureInfo.InvariantCulture, $"{string.Join(", ", review.Week.Rides.Select(r => $"{r.Date:ddd} {r.File[11..]} {r.DurationSeconds / 60:0}"))}; {review.Plan.PlannedHours} h, {review.Past.Weeks.Length} weeks before\n");
            foreach (var f in Remedies.With(findings, change, review, RuleBook.Standard).Where(f => f.Verdict is Verdict.Watch or Verdict.Broken))
                said.Append(CultureInfo.InvariantCulture, $"  {f.Rule} {f.Verdict}: {f.Sentence} | {f.WouldHaveKept} | {f.Advice} | {f.Headline}\n");
            said.Append(CultureInfo.InvariantCulture, $"  held {string.Join(", ", findings.Select(f => f.Held).OfType<string>())}; not judged {string.Join(' ', findings.Where(f => f.Verdict == Verdict.NotJudged).Select(f => f.Rule))}\n");
            if (change is not null)
                said.Append(CultureInfo.InvariantCulture, $"  {change.Sentence} {string.Join(' ', change.Keeps)}\n");
        }
        Golden.Check("generated.txt", string.Create(CultureInfo.InvariantCulture, $"weeks from {5 * seed:000}"), said.ToString());
    }

    private static IEnumerable<(string Name, WeekUnderReview Review)> Variants(string path)
    {
        var (name, asIs) = (Path.GetFileNameWithoutExtension(path), WorkedWeek.Read(path).Review());
        yield return (name, asIs);
        yield return ($"{name}, by sessions", With(p => p with { SplitBy = SplitBy.Session }));
        yield return ($"{name}, a quarter more hours", With(p => p with { WeeklyHours = p.WeeklyHours * 1.25 }));
        yield return ($"{name}, a quarter fewer hours", With(p => p with { WeeklyHours = p.WeeklyHours * 0.75 }));
        if (asIs.Week.Rides.FirstOrDefault(r => r.IsHard) is { } hard)
            yield return ($"{name}, a hard ride without figures", asIs with { Week = Ridden(asIs.Week, r => r == hard ? Sample.Ride(r.Date, RideKind.Unrated, r.DurationSeconds / 60) : r) });

        WeekUnderReview With(Func<TrainingPlan, TrainingPlan> change) =>
            asIs with { Plan = PlanInForce.For(asIs.Plan.Rider with { Plan = change(asIs.Plan.Rider.Plan) }, []) };
    }

    private static WeekFacts Ridden(WeekFacts week, Func<RideFigures, RideFigures> change) =>
        WeekFacts.Build([.. week.Days.Select(d => DayFacts.Build(d.Date, d.Rides.Select(change)))], week.LoadBefore, week.FirstRideOn, week.Exception, week.DaysThatCount);

    // What riding another ride did to the rule, where it is not kept.
    private static IEnumerable<string> Effects(Rule rule, Finding finding) => finding.Verdict is not (Verdict.Watch or Verdict.Broken) ? []
        : finding.Occurrences.SelectMany(o => o.Dates).Select(d => (NodaTime.LocalDate?)d).Append(null).Select(d => $"did: {rule.Effect(finding, d)}");

    private static IEnumerable<string> Lines(Finding finding)
    {
        (string Name, object? Value)[] lines =
        [
            (finding.Verdict.ToString(), finding.Sentence), ("why not", finding.Reason), ("would have kept", finding.WouldHaveKept),
            ("advice", finding.Advice), ("headline", finding.Headline), ("held", finding.Held), ("figure", finding.Figure),
            ("weeks in a row", finding.WeeksInARow is 0 ? null : finding.WeeksInARow), ("standing", finding.Standing),
            ("rests on", $"{finding.Evidence}: {finding.Source} ({finding.SourceInShort ?? "short as it is"})"),
            .. finding.Limits.Select(l => ("limit", (object?)Number(l))),
            .. finding.Occurrences.Select(o => ("where", (object?)string.Join(' ', [o.Verdict, .. o.Dates.Select(d => $"{d:dd MMM}"), .. o.Rides, .. o.Numbers.Select(n => $"{Number(n)};")]))),
            .. finding.Spans.Select(s => ("span", (object?)$"{s.Earlier.StartsAt:dd MMM HH:mm} to {s.Later.StartsAt:dd MMM HH:mm}, {s.Verdict}")),
        ];
        return lines.Where(l => l.Value is not null).Select(l => $"{l.Name}: {l.Value}");
    }

    private static string Number(NamedNumber number) =>
        string.Create(CultureInfo.InvariantCulture, $"{number.Name} {number.Value?.ToString("R", CultureInfo.InvariantCulture) ?? "none"} ({number.Text}, {number.Decimals})");
}
