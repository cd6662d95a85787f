using System.Text.Json.Serialization;
using NodaTime;
using RideAudit.Document.Converters;
using RideAudit.Figures;

namespace RideAudit.Document;

/// <summary>A threshold power that rides were measured against from a date on.</summary>
/// <param name="From">Local date of the first such ride.</param>
/// <param name="PowerW">Threshold power, W.</param>
/// <param name="Source">Where it came from.</param>
public sealed record ThresholdStepEntry(LocalDate From, [property: JsonConverter(typeof(Rounded.To1))] double PowerW, ThresholdSource Source);
