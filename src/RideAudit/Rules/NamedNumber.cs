namespace RideAudit.Rules;

/// <summary>A number with its name, unit in the name (<c>hours_between</c>, <c>low_share</c>), and as it reads.</summary>
/// <param name="Name">snake_case.</param>
/// <param name="Value">The unrounded number; null when missing.</param>
/// <param name="Text">The number with its unit in a few words: <c>22.9 h between</c>; empty when missing.</param>
/// <param name="Decimals">What the document's JSON rounds it to.</param>
public readonly record struct NamedNumber(string Name, double? Value, string Text, int Decimals = 4)
{
    internal static NamedNumber Of(string name, double? value, int decimals, Func<double, string> text) =>
        new(name, value, value is { } known ? text(known) : "", decimals);
}
