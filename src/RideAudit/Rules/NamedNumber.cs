namespace RideAudit.Rules;

/// <summary>A number with its name, unit in the name (<c>hours_between</c>, <c>low_share</c>).</summary>
/// <param name="Name">snake_case.</param>
/// <param name="Value">The number; null when missing.</param>
public readonly record struct NamedNumber(string Name, double? Value);
