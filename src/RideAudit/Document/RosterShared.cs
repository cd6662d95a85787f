using System.Collections.Immutable;
using RideAudit.Rules;

namespace RideAudit.Document;

/// <summary>A finding that several riders of a roster share, so that they can be told together.</summary>
/// <param name="Rule">The rule, by id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Verdict">Broken, or to be watched.</param>
/// <param name="Riders">Their folders, in the roster's order; at least two.</param>
public sealed record RosterShared(string Rule, string Name, Verdict Verdict, ImmutableArray<string> Riders);
