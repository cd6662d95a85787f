using System.Globalization;

namespace RideAudit.Plan.Toml;

/// <summary>Range ends as a mistake prints them.</summary>
internal static class TomlRange
{
    public static string Text(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
