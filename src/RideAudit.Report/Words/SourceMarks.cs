using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Rules;

namespace RideAudit.Report.Words;

/// <summary>Says of a finding what it rests on, by a mark: a ring for common practice without a source, else the number of its source.</summary>
internal sealed class SourceMarks
{
    /// <summary>Stands for common practice without a source.</summary>
    public const string Practice = "°";

    private const string Bare = "common practice, no source";

    private readonly List<string> _sources = [];
    private readonly List<string> _inShort = [];
    private readonly HashSet<string> _inFull = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _marks = new(StringComparer.Ordinal);

    /// <param name="review">Its findings, in the order of the method, number the sources.</param>
    public SourceMarks(ReviewDocument review)
    {
        foreach (var finding in review.Findings)
        {
            if (finding.Source.Equals(Bare, StringComparison.OrdinalIgnoreCase))
            {
                _marks[finding.Rule] = Practice;
                continue;
            }

            var source = Shown.Sentence(finding.Source);
            if (!_sources.Contains(source))
            {
                _sources.Add(source);
                _inShort.Add(Shown.Sentence(finding.SourceInShort ?? finding.Source));
            }
            _marks[finding.Rule] = $"[{Shown.Number(_sources.IndexOf(source) + 1)}]";
            if (finding.Verdict is Verdict.Broken or Verdict.Watch)
                _inFull.Add(source);
        }
    }

    /// <summary>The numbered sources, first to last: those of broken and watched rules in full, the others by author and year.</summary>
    public ImmutableArray<string> Numbered =>
        [.. _sources.Select((source, place) => $"[{Shown.Number(place + 1)}]{Shown.Joint}{(_inFull.Contains(source) ? source : _inShort[place])}")];

    /// <summary>A rule rests on common practice.</summary>
    public bool AnyPractice => _marks.ContainsValue(Practice);

    /// <summary>The mark of a rule's finding; empty for a rule without one.</summary>
    public string Of(string rule) => _marks.GetValueOrDefault(rule, "");
}
