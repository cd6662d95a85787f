using System.Collections.Immutable;
using System.Text.Json.Serialization;
using NodaTime;
using RideAudit.Document.Converters;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Rules.Changes;

namespace RideAudit.Document.Layouts;

/// <summary>One week to come: what to ride on which day, and what the rules say of it ridden so.</summary>
public sealed record NextWeekEntry
{
    private const double WorthSaying = 0.03;

    /// <summary>Its first day.</summary>
    public required LocalDate StartsOn { get; init; }

    /// <summary>The week of ISO 8601; null for a week that does not start on Monday.</summary>
    public required IsoWeek? IsoWeek { get; init; }

    /// <summary>The first day laid out; later than <see cref="StartsOn"/> in a week begun, whose days before it are as ridden.</summary>
    public required LocalDate From { get; init; }

    /// <summary>What the week is excepted for; null for an ordinary week.</summary>
    public ExceptionKind? Exception { get; init; }

    /// <summary>The week is lighter because the layout says so, not the rider file.</summary>
    public bool ProposedLighter { get; init; }

    /// <summary>Hours ridden and laid out, h.</summary>
    [JsonConverter(typeof(Rounded.To2))]
    public required double Hours { get; init; }

    /// <summary>Hours that the plan asks for, h; null when nothing says.</summary>
    [JsonConverter(typeof(Rounded.To2))]
    public double? AskedHours { get; init; }

    /// <summary>Hours that the plan asks for where <see cref="Hours"/> are some way from them, h; null where they are not, and in a week that is not held to its hours.</summary>
    [JsonIgnore]
    public double? AskedOtherwise =>
        (Exception is null or ExceptionKind.Lighter) && AskedHours is { } asked && Math.Abs(Hours - asked) > WorthSaying * asked ? asked : null;

    /// <summary>Training stress ridden and to expect, points.</summary>
    [JsonConverter(typeof(Rounded.To0))]
    public required double ExpectedStress { get; init; }

    /// <summary>The length of the long ride that the review of the week will ask for, min; null in a week that is asked for none.</summary>
    public int? LongRideMinutes { get; init; }

    /// <summary>The seven days.</summary>
    public required ImmutableArray<NextDayEntry> Days { get; init; }

    /// <summary>What the rules say of the week ridden exactly so; one a rule.</summary>
    public required ImmutableArray<Finding> Verdicts { get; init; }

    /// <summary>What the layout could not keep; null when it keeps every rule.</summary>
    public GaveWayEntry? GaveWay { get; init; }

    /// <summary>The smallest change that would keep what a planned week breaks; null when it breaks nothing, and in a week laid out.</summary>
    public SmallestChange? SmallestChange { get; init; }

    /// <summary>Why the week looks as it does, one plain sentence each.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];
}
