using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;

namespace RideAudit.Cli.BrowserPage;

/// <summary>The page as files for any host, under any path.</summary>
internal static class StaticSite
{
    private const string Worker = "sw.js";

    // Only the page of one file begins with it.
    private const string OneFileScript = "js/one.js";

    /// <summary>The files of the site: the service worker is told what to keep for when there is no network.</summary>
    public static IEnumerable<(string Path, byte[] Content)> Files(CarriedPage page)
    {
        var kept = page.Files.Where(f => f.Path is not Worker and not OneFileScript).ToList();
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var (path, content) in kept)
        {
            hash.AppendData(Encoding.UTF8.GetBytes(path));
            hash.AppendData(content);
        }
        var version = Convert.ToHexStringLower(hash.GetHashAndReset())[..16];
        var list = new JsonArray([.. kept.Select(f => (JsonNode)JsonValue.Create(f.Path))]).ToJsonString();
        var worker = Encoding.UTF8.GetString(page[Worker])
            .Replace("const version = '';", $"const version = '{version}';", StringComparison.Ordinal)
            .Replace("const files = [];", $"const files = {list};", StringComparison.Ordinal);
        return kept.Append((Worker, Encoding.UTF8.GetBytes(worker)));
    }
}
