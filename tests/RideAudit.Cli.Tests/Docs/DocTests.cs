using System.Diagnostics;
using System.Text.RegularExpressions;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Docs;

/// <summary>
/// Every command line of README and docs is run, and every transcript is what the program says.
/// RIDEAUDIT_UPDATE=1 writes the transcripts anew, to be read again.
/// </summary>
public partial class DocTests
{
    // Lines about building and packing the program itself: the build script runs them, a test inside the build cannot.
    private static readonly string[] BuildLines = ["dotnet ", "git clone ", "cd ", "apt-get ", ".ci/run", "artifacts/", "AFL_"];

    public static TheoryData<string> Pages => [.. DocPages.Pages()];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_command_line_of_a_page_runs_and_says_what_the_page_shows(string page)
    {
        if (OperatingSystem.IsWindows())
            return;
        using var folder = Workplace(page);
        var actual = new Dictionary<int, string[]>();
        foreach (var block in DocPages.All().Where(b => b.Page == page))
        {
            var line = AsTyped(block.Command);
            if (BuildLines.Any(l => line.StartsWith(l, StringComparison.Ordinal)))
                continue;
            if (line.StartsWith("rideaudit watch ", StringComparison.Ordinal) && !block.IsTranscript)
            {
                Watch(folder.Path, line);
                continue;
            }
            Assert.True(line.Contains("rideaudit ", StringComparison.Ordinal), $"{block}: a test does not know how to run this line.");
            var ended = Bash.Run(folder.Path, $"{{ {line}\n}} 2>&1");
            Assert.True(ended.Code is 0 or 1 || block.IsTranscript, $"{block}: exit code {ended.Code}\n{ended.Out}");
            if (block.IsTranscript)
                actual[block.Line] = Lines(ended.Out);
        }
        if (Repository.Updates)
        {
            Rewrite(page, actual);
            return;
        }
        foreach (var block in DocPages.All().Where(b => b.Page == page && actual.ContainsKey(b.Line)))
            Assert.Equal($"{block}\n{string.Join('\n', block.Shown)}", $"{block}\n{string.Join('\n', actual[block.Line])}");
    }

    // A user in a fresh clone, with a folder of rides of their own.
    private static TempFolder Workplace(string page)
    {
        var folder = new TempFolder();
        Directory.CreateSymbolicLink(folder.At("testdata"), Repository.Path("testdata"));
        if (page == "README.md")
        {
            Demo.CopyTo(folder, from: "2026-03-01", riderFile: false);
            Demo.CopyTo(folder, "my-rides", from: "2026-03-01", riderFile: false);
        }
        else
        {
            Directory.CreateSymbolicLink(folder.At("rides"), Repository.Demo);
            Directory.CreateSymbolicLink(folder.At("my-rides"), Repository.Demo);
        }
        Directory.CreateDirectory(folder.At("riders"));
        Demo.CopyTo(folder, "riders/a");
        Demo.CopyTo(folder, "riders/b", from: "2026-06-01");
        foreach (var late in Directory.EnumerateFiles(folder.At("riders/b")).Where(f => string.CompareOrdinal(Path.GetFileName(f), "2026-06-15") >= 0 && !f.EndsWith(".toml", StringComparison.Ordinal)))
            File.Delete(late);
        folder.Write("riders/c/notes.txt", "nothing to read here");
        return folder;
    }

    private static string AsTyped(string command) => DotnetRun().Replace(command, "rideaudit ");

    private static string[] Lines(string text)
    {
        var lines = text.TrimEnd('\n').Split('\n').Select(l => l.TrimEnd()).ToArray();
        return lines is [""] ? [] : lines;
    }

    private static void Watch(string folder, string line)
    {
        var args = System.CommandLine.Parsing.CommandLineParser.SplitCommandLine(line).Skip(1).ToArray();
        using var process = RealProgram.Start(folder, [("LANG", "C.UTF-8"), ("TZ", "UTC")], args);
        var said = new List<string>();
        while (!said.Any(s => s.StartsWith("Reviewed at", StringComparison.Ordinal)))
            said.Add(process.StandardError.ReadLine() ?? throw new InvalidOperationException($"{line} ended early: {string.Join('\n', said)}"));
        using var kill = Process.Start("kill", ["-INT", $"{process.Id}"]);
        kill.WaitForExit();
        process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.Equal(130, process.ExitCode);
    }

    private static void Rewrite(string page, Dictionary<int, string[]> actual)
    {
        var path = Repository.Path(page);
        var lines = File.ReadAllLines(path).ToList();
        foreach (var block in DocPages.All().Where(b => b.Page == page && actual.ContainsKey(b.Line)).OrderByDescending(b => b.Line))
        {
            lines.RemoveRange(block.Line + 1, block.Shown.Count);
            lines.InsertRange(block.Line + 1, actual[block.Line]);
        }
        File.WriteAllText(path, string.Join('\n', lines) + "\n");
    }

    [GeneratedRegex(@"dotnet run (?:-c \w+ )?--project src/RideAudit\.Cli(?: -c \w+)? -- ")]
    private static partial Regex DotnetRun();
}
