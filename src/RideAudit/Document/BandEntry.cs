using System.Text.Json.Serialization;
using RideAudit.Document.Converters;

namespace RideAudit.Document;

/// <summary>Seconds in the bands.</summary>
/// <param name="Low">Low, s.</param>
/// <param name="Middle">Middle, s.</param>
/// <param name="High">High, s.</param>
public sealed record BandEntry(
    [property: JsonConverter(typeof(Rounded.To0))] double Low,
    [property: JsonConverter(typeof(Rounded.To0))] double Middle,
    [property: JsonConverter(typeof(Rounded.To0))] double High)
{
    /// <summary>All seconds that have a band.</summary>
    [JsonIgnore]
    public double Total => Low + Middle + High;
}
