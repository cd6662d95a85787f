namespace RideAudit.Plan;

/// <summary>One mistake in a rider file.</summary>
/// <param name="Line">Line, 1 first.</param>
/// <param name="Column">Column, 1 first.</param>
/// <param name="Found">What stands there.</param>
/// <param name="Allowed">What is allowed.</param>
/// <param name="Nearest">The nearest known key; null when none is near.</param>
public sealed record RiderFileMistake(int Line, int Column, string Found, string Allowed, string? Nearest);
