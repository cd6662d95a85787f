using System.Text.RegularExpressions;

namespace RideAudit.Cli.Tests.Support;

/// <summary>Takes colours out of terminal text.</summary>
internal static partial class Ansi
{
    public static string Strip(string text) => Codes().Replace(text, "");

    [GeneratedRegex("\u001b\\[[0-9;]*m")]
    private static partial Regex Codes();
}
