using System.Text.Json.Serialization;
using NodaTime;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Document;

/// <summary>One day of a layout.</summary>
public sealed record LayoutDayEntry
{
    /// <summary>Local date.</summary>
    public required LocalDate Date { get; init; }

    /// <summary>What the day is for; rest where the rider file leaves it to something else.</summary>
    [JsonIgnore]
    public DayKind Kind { get; init; }

    /// <summary>What the rider file leaves the day to: an event, or being away; null for a day of the layout.</summary>
    [JsonIgnore]
    public ExceptionKind? Exception { get; init; }

    /// <summary>The kind in a word: <c>event</c> or <c>away</c> where the rider file says so.</summary>
    [JsonPropertyName("kind")]
    public string KindInWords => Words.OrNull(Exception) ?? Words.Of(Kind);

    /// <summary>Timer time, whole minutes; 0 without a ride.</summary>
    public int Minutes { get; init; }

    /// <summary>Training stress to expect, points.</summary>
    [JsonConverter(typeof(Rounded.To0))]
    public double ExpectedStress { get; init; }

    /// <summary>What to ride.</summary>
    public required string Sentence { get; init; }
}
