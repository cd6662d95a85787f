using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Trust;

/// <summary>Every output of the program about one folder, by the name of what holds it.</summary>
internal static class Outputs
{
    /// <summary>Runs the commands in this process.</summary>
    /// <param name="rides">The folder of rides.</param>
    /// <param name="into">Where files go; its own name is no output.</param>
    /// <param name="asOf">The date looked back from.</param>
    /// <param name="more">More words for the review's command line.</param>
    public static Dictionary<string, byte[]> Of(string rides, string into, string asOf, params string[] more)
    {
        Directory.CreateDirectory(into);
        var made = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        foreach (var (name, words) in Commands(rides, asOf, more))
        {
            using var shell = new TestShell(folder: into);
            var code = shell.Run(words);
            Assert.True(code == 0, $"{string.Join(' ', words)}: {code} {shell.Error}");
            made[name + " out"] = System.Text.Encoding.UTF8.GetBytes(shell.Out);
            made[name + " error"] = System.Text.Encoding.UTF8.GetBytes(shell.Error);
        }
        foreach (var file in Directory.EnumerateFiles(into))
            made[Path.GetFileName(file)] = File.ReadAllBytes(file);
        return made;
    }

    /// <summary>The command lines that between them write every kind of output, each with a name.</summary>
    public static IEnumerable<(string Name, string[] Words)> Commands(string rides, string asOf, params string[] more)
    {
        yield return ("review", ["review", rides, "--as-of", asOf, "--text", "--pdf", "review.pdf", "--png", "review.png", "--json", "review.json", .. more]);
        yield return ("summary", ["review", rides, "--as-of", asOf, "--no-pdf", .. more]);
        yield return ("json", ["review", rides, "--as-of", asOf, "--no-pdf", "--json", "-", .. more]);
        yield return ("rides", ["rides", rides, "--as-of", asOf]);
        yield return ("rides-csv", ["rides", rides, "--as-of", asOf, "--format", "csv"]);
        yield return ("weeks-csv", ["weeks", rides, "--as-of", asOf, "--format", "csv"]);
        yield return ("next", ["next", rides, "--as-of", asOf, "--ics", "next.ics"]);
    }
}
