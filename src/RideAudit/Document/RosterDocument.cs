using System.Collections.Immutable;
using NodaTime;
using RideAudit.Rules;

namespace RideAudit.Document;

/// <summary>Every rider of a roster, those who need the coach first at the top.</summary>
/// <param name="Schema">Always <c>rideaudit-roster/1</c>.</param>
/// <param name="AsOf">The date asked for, or today.</param>
/// <param name="Riders">In order of risk to the rider.</param>
public sealed record RosterDocument(string Schema, LocalDate AsOf, ImmutableArray<RosterEntry> Riders)
{
    /// <summary>Findings of several riders, most serious first.</summary>
    public ImmutableArray<SharedFinding> Shared { get; init; } = [];

    /// <summary>A finding that several riders share, so that they can be told together.</summary>
    /// <param name="Rule">The rule, by id.</param>
    /// <param name="Name">Its name.</param>
    /// <param name="Verdict">Broken, or to be watched.</param>
    /// <param name="Riders">Their folders, in the roster's order; at least two.</param>
    public sealed record SharedFinding(string Rule, string Name, Verdict Verdict, ImmutableArray<string> Riders);
}
