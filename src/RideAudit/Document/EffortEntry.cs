using System.Text.Json.Serialization;
using NodaTime;
using RideAudit.Document.Converters;

namespace RideAudit.Document;

/// <summary>A best mean power and the ride it was ridden in.</summary>
/// <param name="Seconds">Window, s.</param>
/// <param name="MeanPowerW">Mean power over it, W.</param>
/// <param name="File">The ride.</param>
/// <param name="Date">Its local date.</param>
public sealed record EffortEntry(int Seconds, [property: JsonConverter(typeof(Rounded.To1))] double MeanPowerW, string File, LocalDate Date);
