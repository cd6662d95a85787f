namespace RideAudit.Document;

/// <summary>Seconds in the bands, whole seconds.</summary>
/// <param name="Low">Low, s.</param>
/// <param name="Middle">Middle, s.</param>
/// <param name="High">High, s.</param>
public sealed record BandEntry(long Low, long Middle, long High);
