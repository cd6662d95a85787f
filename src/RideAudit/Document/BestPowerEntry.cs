using System.Text.Json.Serialization;
using RideAudit.Document.Converters;

namespace RideAudit.Document;

/// <summary>A best mean power of a ride.</summary>
/// <param name="Seconds">Window, s.</param>
/// <param name="MeanPowerW">Mean power over it, W.</param>
/// <param name="StartSecond">Where it starts, s of timer time.</param>
public sealed record BestPowerEntry(int Seconds, [property: JsonConverter(typeof(Rounded.To1))] double MeanPowerW, int StartSecond);
