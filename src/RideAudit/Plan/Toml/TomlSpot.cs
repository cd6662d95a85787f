namespace RideAudit.Plan.Toml;

/// <summary>A stretch of a text, in UTF-16 units.</summary>
/// <param name="Start">Its first unit.</param>
/// <param name="End">One past its last.</param>
internal readonly record struct TomlSpot(int Start, int End);
