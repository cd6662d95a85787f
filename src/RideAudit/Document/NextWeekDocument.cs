using System.Collections.Immutable;
using System.Text.Json.Serialization;
using NodaTime;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Rules;

namespace RideAudit.Document;

/// <summary>A layout for the week after the reviewed one: which day for what, judged by the same rules as a ridden week.</summary>
public sealed record NextWeekDocument
{
    /// <summary>Name and version of the document's shape.</summary>
    public string Schema { get; init; } = "rideaudit-next/1";

    /// <summary>The date the layout looks from.</summary>
    public required LocalDate AsOf { get; init; }

    /// <summary>The rider.</summary>
    public required RiderEntry Rider { get; init; }

    /// <summary>First day of the week laid out.</summary>
    public required LocalDate StartsOn { get; init; }

    /// <summary>The week of ISO 8601; null for a week that does not start on Monday.</summary>
    public required IsoWeek? IsoWeek { get; init; }

    /// <summary>What the week is excepted for; null for an ordinary week. A lighter week may be the layout's own proposal: the notes say so.</summary>
    public required ExceptionKind? Exception { get; init; }

    /// <summary>Hours laid out.</summary>
    [JsonConverter(typeof(Rounded.To2))]
    public required double Hours { get; init; }

    /// <summary>Training stress to expect, points: an estimate from the sessions' intended intensity.</summary>
    [JsonConverter(typeof(Rounded.To0))]
    public required double ExpectedStress { get; init; }

    /// <summary>The seven days; empty when no layout could be made, and the notes say why.</summary>
    public required ImmutableArray<LayoutDayEntry> Days { get; init; }

    /// <summary>What the rules say of the week ridden exactly so.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Why the week looks as it does, one plain sentence each.</summary>
    public required ImmutableArray<string> Notes { get; init; }

    /// <summary>The cautions every reader sees.</summary>
    public ImmutableArray<string> Cautions { get; init; } = RideAudit.Document.Cautions.All;
}
