using System.Text.Json.Serialization;
using NodaTime;
using RideAudit.Document.Converters;
using RideAudit.Rules;

namespace RideAudit.Document;

/// <summary>From the end of one hard ride to the start of the next.</summary>
public sealed record SpanEntry
{
    /// <summary>Local end of the earlier ride.</summary>
    public required OffsetDateTime From { get; init; }

    /// <summary>Local start of the later ride.</summary>
    public required OffsetDateTime To { get; init; }

    /// <summary>The earlier ride's file; it may lie in the week before.</summary>
    public required string FromRide { get; init; }

    /// <summary>The later ride's file.</summary>
    public required string ToRide { get; init; }

    /// <summary>Hours between.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double Hours { get; init; }

    /// <summary>What the rule that looks at it says.</summary>
    public required Verdict Verdict { get; init; }
}
