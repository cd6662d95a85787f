using System.Globalization;
using System.Text;
using RideAudit.Rules;

namespace RideAudit.Tests.Rules;

/// <summary>All that the rules say of the worked weeks, word by word and number by number, as a reader has approved it.</summary>
public sealed class FindingTextTests
{
    [Fact]
    public void What_the_rules_say_of_the_worked_weeks_is_what_was_approved()
    {
        var weeks = Directory.GetFiles(Repository.Path("testdata", "weeks"), "*.week").Order(StringComparer.Ordinal)
            .Select(path => (Name: Path.GetFileNameWithoutExtension(path), Review: WorkedWeek.Read(path).Review())).ToArray();
        var said = new StringBuilder("Findings on the weeks of testdata/weeks: rule by rule, each line only once a rule.\n");
        foreach (var rule in RuleBook.Standard.All)
        {
            said.Append(CultureInfo.InvariantCulture, $"\n# {rule.Id}\n");
            var known = new HashSet<string>();
            foreach (var (name, review) in weeks)
            {
                var lines = Lines(rule.Judge(review)).Where(known.Add).ToArray();
                if (lines.Length > 0)
                    said.Append(CultureInfo.InvariantCulture, $"{name}\n{string.Concat(lines.Select(l => $"  {l}\n"))}");
            }
        }
        Golden.Check("findings.txt", said.ToString());
    }

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
