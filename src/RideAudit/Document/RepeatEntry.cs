using System.Text.Json.Serialization;
using RideAudit.Document.Converters;

namespace RideAudit.Document;

/// <summary>One repeat of a planned session and what was ridden for it.</summary>
/// <param name="Seconds">Its planned length, s.</param>
/// <param name="TargetLowW">Least power meant, W; null for an effort all out.</param>
/// <param name="TargetHighW">Most power meant, W; null for an effort all out.</param>
/// <param name="RiddenW">Mean power of the same length ridden, W; null for a repeat that was not ridden.</param>
/// <param name="File">The ride; null for a repeat that was not ridden.</param>
/// <param name="StartSecond">Second of the ride’s timer time that it begins at; null for a repeat that was not ridden.</param>
public sealed record RepeatEntry(
    int Seconds,
    [property: JsonConverter(typeof(Rounded.To1))] double? TargetLowW,
    [property: JsonConverter(typeof(Rounded.To1))] double? TargetHighW,
    [property: JsonConverter(typeof(Rounded.To1))] double? RiddenW,
    string? File,
    int? StartSecond);
