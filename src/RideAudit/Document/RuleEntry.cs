using System.Collections.Immutable;
using RideAudit.Rules;

namespace RideAudit.Document;

/// <summary>One rule as <c>rules</c> prints it.</summary>
/// <param name="Rule">Its id.</param>
/// <param name="Limits">The limits in force, by name.</param>
/// <param name="Evidence">What it rests on.</param>
/// <param name="Sentence">What it asks.</param>
public sealed record RuleEntry(string Rule, ImmutableArray<NamedNumber> Limits, Evidence Evidence, string Source, string Sentence);
