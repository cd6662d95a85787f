using System.Text.Json.Serialization;
using RideAudit.Document.Converters;

namespace RideAudit.Document;

/// <summary>Shares of the banded time, 0 to 1.</summary>
/// <param name="Low">Low share.</param>
/// <param name="Middle">Middle share.</param>
/// <param name="High">High share.</param>
public sealed record SplitEntry([property: JsonConverter(typeof(Rounded.To4))] double Low, [property: JsonConverter(typeof(Rounded.To4))] double Middle, [property: JsonConverter(typeof(Rounded.To4))] double High);
