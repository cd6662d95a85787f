using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;

namespace RideAudit.Cli.BrowserPage;

/// <summary>The page as one HTML file that runs from a disk, a stick or an attachment and connects to nothing.</summary>
/// <remarks>
/// Two things are inline, the style and the script that unpacks the rest, and the policy names both by their hashes. Everything else is
/// data: gzip in Base64, because that is what every browser unpacks by itself.
/// </remarks>
internal static class SinglePage
{
    /// <summary>The HTML file, UTF-8.</summary>
    public static byte[] Write(CarriedPage page)
    {
        var style = Text(page["page.css"]);
        var script = Text(page["js/one.js"]);
        var (index, packed) = Pack(page);
        var html = Text(page["index.html"]);
        html = Replaced(html, "<meta http-equiv=\"Content-Security-Policy\"", ">", $"<meta http-equiv=\"Content-Security-Policy\" content=\"{Policy(style, script)}\">");
        html = Replaced(html, "<link rel=\"icon\"", ">\n", "");
        html = Replaced(html, "<link rel=\"stylesheet\"", ">", $"<style>{style}</style>");
        html = Replaced(html, "<script type=\"module\" async", "</script>\n", "");
        html = Replaced(html, "<script type=\"module\"", "</script>\n", "");
        return Encoding.UTF8.GetBytes(html.Replace(
            "</body>",
            $"<script type=\"application/json\" id=\"bundle-index\">{index}</script>\n<script type=\"application/octet-stream\" id=\"bundle\">{packed}</script>\n<script>{script}</script>\n</body>",
            StringComparison.Ordinal));
    }

    private static string Policy(string style, string script) =>
        $"default-src 'none'; script-src '{Hash(script)}' blob: 'wasm-unsafe-eval'; style-src '{Hash(style)}'; img-src blob:; font-src blob:; " +
        "connect-src 'none'; worker-src blob:; base-uri 'none'; form-action 'none'";

    private static string Hash(string inline) => $"sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(inline)))}";

    private static (string Index, string Packed) Pack(CarriedPage page)
    {
        var index = new JsonObject();
        using var packed = new MemoryStream();
        var at = 0;
        using (var gzip = new GZipStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            foreach (var (path, content) in page.Files.Where(f => f.Path.StartsWith("js/", StringComparison.Ordinal) || f.Path.StartsWith("_framework/", StringComparison.Ordinal)))
            {
                index[path] = new JsonArray(at, content.Length);
                gzip.Write(content);
                at += content.Length;
            }
        }
        return (index.ToJsonString(), Convert.ToBase64String(packed.ToArray()));
    }

    private static string Replaced(string html, string from, string to, string by)
    {
        var start = html.IndexOf(from, StringComparison.Ordinal);
        if (start < 0)
            throw new InvalidDataException($"The page has no {from}.");
        var end = html.IndexOf(to, start, StringComparison.Ordinal) + to.Length;
        return string.Concat(html.AsSpan(0, start), by, html.AsSpan(end));
    }

    private static string Text(byte[] bytes) => Encoding.UTF8.GetString(bytes).ReplaceLineEndings("\n");
}
