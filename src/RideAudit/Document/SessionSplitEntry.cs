using System.Text.Json.Serialization;
using RideAudit.Document.Converters;

namespace RideAudit.Document;

/// <summary>Shares of the rides by what they were for, 0 to 1.</summary>
/// <param name="Easy">Rides that are neither high nor threshold.</param>
/// <param name="Hard">High and threshold rides.</param>
public sealed record SessionSplitEntry([property: JsonConverter(typeof(Rounded.To4))] double Easy, [property: JsonConverter(typeof(Rounded.To4))] double Hard);
