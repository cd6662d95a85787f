using System.Text.Json.Serialization;
using RideAudit.Document.Converters;
using RideAudit.Plan;

namespace RideAudit.Document;

/// <summary>The rider of a review: a label, no other personal detail.</summary>
public sealed record RiderEntry
{
    /// <summary>As the rider file says.</summary>
    public required string Label { get; init; }

    /// <summary>The plan’s volume; null without planned hours.</summary>
    public required Tier? Tier { get; init; }

    /// <summary>How long and how seriously the rider has ridden.</summary>
    public required Experience Experience { get; init; }

    /// <summary>IANA name.</summary>
    public required string TimeZone { get; init; }

    /// <summary>Hours asked of the reviewed week, h: those of its plan table, of its dates or of an ordinary week, less in a week planned lighter; null when neither given nor derivable.</summary>
    [JsonConverter(typeof(Rounded.To2))]
    public double? PlannedHours { get; init; }

    /// <summary>Planned hours are the mean of the weeks before.</summary>
    public bool PlannedHoursFromHistory { get; init; }
}
