using NodaTime;

namespace RideAudit.Document;

/// <summary>A threshold power that rides were measured against from a date on.</summary>
/// <param name="From">Local date of the first such ride.</param>
/// <param name="PowerW">Threshold power, W, one decimal.</param>
/// <param name="Source"><c>rider file</c>, <c>rider file, first entry</c>, <c>recording</c>, <c>estimate</c>.</param>
public sealed record ThresholdStepEntry(LocalDate From, double PowerW, string Source);
