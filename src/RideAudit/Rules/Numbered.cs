namespace RideAudit.Rules;

/// <summary>Numbers of an occurrence, rounded to what they can bear.</summary>
internal static class Numbered
{
    public static NamedNumber Of(string name, double? value, int decimals) =>
        new(name, value is { } number ? Math.Round(number, decimals, MidpointRounding.AwayFromZero) : null);
}
