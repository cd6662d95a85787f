using System.Text.RegularExpressions;

namespace RideAudit.Benchmarks.Whole;

/// <summary>docs/performance.md, whose tables of whole processes are written by this program.</summary>
internal static class Page
{
    /// <summary>Puts a text in the place that is marked for it.</summary>
    /// <param name="path">The page.</param>
    /// <param name="mark">The name of the place.</param>
    /// <param name="text">What stands there from now on.</param>
    /// <exception cref="InvalidOperationException">There is no such place.</exception>
    public static void Write(string path, string mark, string text)
    {
        var page = File.ReadAllText(path);
        var place = new Regex($"(?s)(<!-- {mark} -->\n).*?(<!-- end -->)");
        if (!place.IsMatch(page))
            throw new InvalidOperationException($"{path} has no place for {mark}.");
        File.WriteAllText(path, place.Replace(page, m => m.Groups[1].Value + text.TrimEnd() + "\n" + m.Groups[2].Value));
    }

    /// <summary>A Markdown table.</summary>
    public static string Table(string[] header, IEnumerable<string[]> rows) =>
        string.Concat(new[] { header, [.. header.Select((_, i) => i == 0 ? "---" : "---:")] }.Concat(rows).Select(r => $"| {string.Join(" | ", r)} |\n"));
}
