using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Rules;

namespace RideAudit.Report.Words;

/// <summary>Says of a finding what it rests on, by a mark: a ring for common practice, else the number of its source.</summary>
internal sealed class SourceMarks
{
    /// <summary>Stands for common practice without a source.</summary>
    public const string Practice = "°";

    private readonly List<string> sources = [];
    private readonly Dictionary<string, string> marks = new(StringComparer.Ordinal);

    /// <param name="review">Its findings, in the order of the method, number the sources.</param>
    public SourceMarks(ReviewDocument review)
    {
        foreach (Finding finding in review.Findings)
        {
            if (finding.Evidence == Evidence.CommonPractice)
            {
                marks[finding.Rule] = Practice;
                continue;
            }

            string source = Shown.Sentence(finding.Source);
            if (!sources.Contains(source))
                sources.Add(source);
            marks[finding.Rule] = $"[{Shown.Number(sources.IndexOf(source) + 1)}]";
        }
    }

    /// <summary>The numbered sources, first to last.</summary>
    public ImmutableArray<string> Numbered => [.. sources.Select((source, place) => $"[{Shown.Number(place + 1)}]{Shown.Joint}{source}")];

    /// <summary>A rule rests on common practice.</summary>
    public bool AnyPractice => marks.ContainsValue(Practice);

    /// <summary>The mark of a rule's finding; empty for a rule without one.</summary>
    public string Of(string rule) => marks.GetValueOrDefault(rule, "");
}
