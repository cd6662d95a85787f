using System.Collections.Immutable;
using System.Text.Json.Serialization;
using NodaTime;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Document.Layouts;

/// <summary>One day of a week to come.</summary>
public sealed record NextDayEntry
{
    /// <summary>Local date.</summary>
    public required LocalDate Date { get; init; }

    /// <summary>What the day comes to by the rules: the kind of its hardest ride.</summary>
    public required DayKind Kind { get; init; }

    /// <summary>What the day is excepted for; null for an ordinary day. Nothing is laid out on an event, ill or away day.</summary>
    public ExceptionKind? Exception { get; init; }

    /// <summary>Minutes already ridden on it; 0 for a day to come.</summary>
    public int RiddenMinutes { get; init; }

    /// <summary>Training stress already ridden on it, points; 0 for a day to come.</summary>
    [JsonIgnore]
    public double RiddenStress { get; init; }

    /// <summary>Its sessions in order; empty on a rest day and on a day already ridden.</summary>
    public required ImmutableArray<NextSessionEntry> Sessions { get; init; }

    /// <summary>Minutes laid out.</summary>
    public int Minutes => Sessions.Sum(s => s.Minutes);
}
