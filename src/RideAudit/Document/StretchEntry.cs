using System.Text.Json.Serialization;
using RideAudit.Document.Converters;

namespace RideAudit.Document;

/// <summary>A sustained stretch at or above a share of threshold power.</summary>
/// <param name="SharePercent">The share, %.</param>
/// <param name="StartSecond">First second of timer time.</param>
/// <param name="EndSecond">Second after the last.</param>
/// <param name="MeanPowerW">Mean power over it, W.</param>
public sealed record StretchEntry(double SharePercent, int StartSecond, int EndSecond, [property: JsonConverter(typeof(Rounded.To1))] double MeanPowerW);
