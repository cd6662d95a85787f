using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace RideAudit.Cli.Tests.Trust;

/// <summary>Everything a PDF says: its bytes outside streams, its streams inflated, and the text of its pages and its information as characters.</summary>
internal static partial class PdfText
{
    /// <summary>Bytes and inflated streams, a byte a character.</summary>
    public static string Inflated(byte[] pdf) => Encoding.Latin1.GetString(pdf) + string.Concat(Streams(pdf));

    /// <summary>The text of the pages without spaces, and the titles.</summary>
    public static string Shown(byte[] pdf)
    {
        var streams = Streams(pdf).ToArray();
        // The maker names fonts F1, F2, … and writes their character maps in that order.
        var maps = streams.Where(s => s.Contains("begincmap", StringComparison.Ordinal)).Select(MapOf).ToArray();
        var text = new StringBuilder();
        foreach (var page in streams.Where(s => s.Contains(" TJ ET", StringComparison.Ordinal)))
            foreach (Match run in Run().Matches(page))
                foreach (Match piece in Hex().Matches(run.Groups[2].Value))
                    for (var i = 0; i < piece.Groups[1].Length; i += 4)
                        text.Append(maps[int.Parse(run.Groups[1].Value, CultureInfo.InvariantCulture) - 1][piece.Groups[1].Value.Substring(i, 4)]);
        foreach (Match title in Title().Matches(Encoding.Latin1.GetString(pdf)))
            text.Append(Wide(title.Groups[1].Value));
        return text.ToString().Replace(" ", "", StringComparison.Ordinal).Replace("\u00A0", "", StringComparison.Ordinal);
    }

    private static IEnumerable<string> Streams(byte[] pdf)
    {
        foreach (Match match in Stream().Matches(Encoding.Latin1.GetString(pdf)))
        {
            using var packed = new ZLibStream(new MemoryStream(pdf, match.Index + match.Length, int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture)), CompressionMode.Decompress);
            using var inflated = new MemoryStream();
            packed.CopyTo(inflated);
            yield return Encoding.Latin1.GetString(inflated.ToArray());
        }
    }

    private static Dictionary<string, string> MapOf(string map) =>
        Mapping().Matches(map).DistinctBy(m => m.Groups[1].Value).ToDictionary(m => m.Groups[1].Value, m => Wide(m.Groups[2].Value));

    private static string Wide(string hex) => Encoding.BigEndianUnicode.GetString(Convert.FromHexString(hex));

    [GeneratedRegex(@"/Filter/FlateDecode/Length (\d+)[^>]*>>\nstream\n")]
    private static partial Regex Stream();

    [GeneratedRegex(@"/F(\d+) [\d.]+ Tf [^\[]*\[([^\]]*)\] TJ ET")]
    private static partial Regex Run();

    [GeneratedRegex("<([0-9A-F]*)>")]
    private static partial Regex Hex();

    [GeneratedRegex("^<([0-9A-F]{4})> <([0-9A-F]+)>$", RegexOptions.Multiline)]
    private static partial Regex Mapping();

    [GeneratedRegex("/(?:Title|Subject) <FEFF([0-9A-F]*)>")]
    private static partial Regex Title();
}
