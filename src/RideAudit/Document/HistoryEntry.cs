using System.Text.Json.Serialization;
using NodaTime;
using RideAudit.Document.Converters;
using RideAudit.Plan;

namespace RideAudit.Document;

/// <summary>One week of the trend.</summary>
public sealed record HistoryEntry
{
    /// <summary>First day.</summary>
    public required LocalDate StartsOn { get; init; }

    /// <summary>Hours ridden.</summary>
    [JsonConverter(typeof(Rounded.To2))]
    public required double Hours { get; init; }

    /// <summary>Training stress, points.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double Stress { get; init; }

    /// <summary>Hours the plan asked of this week, h; null when nothing says.</summary>
    [JsonConverter(typeof(Rounded.To2))]
    public double? PlannedHours { get; init; }

    /// <summary>Seconds in the bands.</summary>
    public required BandEntry BandSeconds { get; init; }

    /// <summary>Chronic load at the week's end.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double ChronicLoad { get; init; }

    /// <summary>Acute load at the week's end.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public double AcuteLoad { get; init; }

    /// <summary>Change in chronic load.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double RampPerWeek { get; init; }

    /// <summary>Longest ride, s.</summary>
    [JsonConverter(typeof(Rounded.To0))]
    public double LongestRideSeconds { get; init; }

    /// <summary>What the rider file excepts the week for; null for an ordinary week.</summary>
    public ExceptionKind? Exception { get; init; }

    /// <summary>Within the first 42 days of riding.</summary>
    public bool SettlingIn { get; init; }
}
