namespace RideAudit.Plan.Blocks;

/// <summary>A place in a text of blocks that cannot be read.</summary>
/// <param name="Column">Letter of the text, 1 first.</param>
/// <param name="Found">What stands there.</param>
/// <param name="Allowed">What is allowed.</param>
/// <param name="Nearest">The nearest known word; null when none is near.</param>
public sealed record BlocksMistake(int Column, string Found, string Allowed, string? Nearest = null);
