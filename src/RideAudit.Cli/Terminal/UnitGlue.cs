using System.Text.RegularExpressions;

namespace RideAudit.Cli.Terminal;

/// <summary>Puts a no-break space between a figure and its unit, so that no line ends between them.</summary>
internal static partial class UnitGlue
{
    /// <summary>The text with its figures joined to their units.</summary>
    public static string Apply(string text) => Figure().Replace(text, "\u00A0");

    [GeneratedRegex(@"(?<=\d) (?=(?:%|W|h|min|s|bpm|kJ|d|points)(?!\w))|(?<=\d[ \u00A0]h) (?=\d\d(?!\w))")]
    private static partial Regex Figure();
}
