using System.Globalization;
using RideAudit.Cli.Terminal;
using RideAudit.Document;

using RideAudit.Formatting;
using RideAudit.Rules;

namespace RideAudit.Cli.Output;

/// <summary>The rules in force, for reading.</summary>
internal static class RuleTable
{
    private const int TextColumn = 24;

    /// <summary>Writes each rule with what it asks, its limits, its evidence and its source.</summary>
    public static void Write(Page page, IReadOnlyList<RuleEntry> rules)
    {
        for (var i = 0; i < rules.Count; i++)
        {
            if (i > 0)
                page.Blank();
            var rule = rules[i];
            page.Hanging(new Piece(rule.Rule, Tone.Strong), rule.Sentence, column: TextColumn);
            if (!rule.Limits.IsDefaultOrEmpty)
                page.Text("limits: " + Limits(rule), Tone.Quiet, TextColumn);
            page.Text(Grounds(rule.Evidence, rule.Source), Tone.Quiet, TextColumn);
        }
    }

    /// <summary>What a rule rests on and its source, without saying the same twice.</summary>
    public static string Grounds(Evidence evidence, string source)
    {
        var grade = Words.Of(evidence);
        return Shown.Sentence(source.StartsWith(grade, StringComparison.OrdinalIgnoreCase) ? source : $"{grade}: {source}");
    }

    private static string Limits(RuleEntry rule) => string.Join(
        ", ", rule.Limits.Where(l => l.Value is not null).Select(l => $"{l.Name} {l.Value!.Value.ToString("0.####", CultureInfo.InvariantCulture)}"));
}
