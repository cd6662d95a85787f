using System.Collections.Immutable;
using System.Text.Json.Serialization;
using NodaTime;
using RideAudit.Document.Converters;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Document;

/// <summary>One day of the reviewed week.</summary>
public sealed record DayEntry
{
    /// <summary>Local date.</summary>
    public required LocalDate Date { get; init; }

    /// <summary>What the day was; null for a day of an unfinished week that is not over.</summary>
    [JsonConverter(typeof(DayKindJson))]
    public required DayKind? Kind { get; init; }

    /// <summary>Hours ridden.</summary>
    [JsonConverter(typeof(Rounded.To2))]
    public required double Hours { get; init; }

    /// <summary>Training stress, points; null when none of the day's rides has one.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double? Stress { get; init; }

    /// <summary>The rides, by file.</summary>
    public required ImmutableArray<string> Rides { get; init; }

    /// <summary>Hours of other activity.</summary>
    [JsonConverter(typeof(Rounded.To2))]
    public double OtherActivityHours { get; init; }

    /// <summary>What the day is excepted for; null for an ordinary day.</summary>
    public ExceptionKind? Exception { get; init; }

    /// <summary>What the plan tables lay out for the day; empty without a row.</summary>
    public ImmutableArray<PlannedSessionEntry> Planned { get; init; } = [];

    /// <summary>The kind in a word or two: <c>to come</c> where there is none yet.</summary>
    [JsonIgnore]
    public string KindInWords => WordOf(Kind);

    /// <summary>Hard: a high or a threshold day.</summary>
    [JsonIgnore]
    public bool IsHard => Kind is DayKind.High or DayKind.Threshold;

    internal static string WordOf(DayKind? kind) => Words.OrNull(kind) ?? "to come";
}
