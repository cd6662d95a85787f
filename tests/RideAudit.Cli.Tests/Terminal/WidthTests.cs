using RideAudit.Cli.Terminal;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Terminal;

/// <summary>Nothing that is said on a terminal is wider than it.</summary>
public class WidthTests
{
    private static readonly string[] Lines =
    [
        "review rides --as-of 2026-06-22 --no-pdf", "review rides --as-of 2026-06-22 --text --no-pdf", "rides rides --as-of 2026-06-22", "weeks rides --as-of 2026-06-22",
        "rules", "rules --rider rides", "next rides --as-of 2026-06-22", "roster . --as-of 2026-06-22 --out out", "new-rider a-rider-with-a-long-name/of-a-file-for-a-rider.toml",
        "--help", "review --help", "new-rider --help", "completion --help", "review --pfd x", "reviw", "review no-such-folder-anywhere-near-here-or-there-or-anywhere-at-all", "rides rides --since 2027-01-01 --as-of 2026-06-22",
    ];

    public static TheoryData<int, string> Cases
    {
        get
        {
            var cases = new TheoryData<int, string>();
            foreach (var width in new[] { 40, 80, 160 })
                foreach (var line in Lines)
                    cases.Add(width, line);
            return cases;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void No_line_is_wider_than_the_terminal(int width, string line)
    {
        using var folder = new TempFolder();
        var rides = Demo.CopyTo(folder, from: "2026-06-15");
        File.Move(Path.Combine(rides, "2026-06-21-tempo.fit"), Path.Combine(rides, "サイクリング-a-file-with-a-name-that-is-longer-than-any-terminal-would-like-it-to-be-2026-06-21.fit"));
        folder.Write("rides/a-file-that-is-no-ride-and-has-a-name-that-is-longer-than-any-terminal-would-like.fit", "not a ride");
        Directory.CreateDirectory(folder.At("a-rider-with-a-long-name"));
        using var shell = new TestShell(width, folder: folder.Path, terminal: true);
        shell.Run(line.Split(' '));
        Assert.NotEqual("", shell.Out + shell.Error);
        Assert.All((shell.Out + shell.Error).Split('\n'), l => Assert.True(Cells.Of(l) <= width, $"{Cells.Of(l)}: {l}"));
    }
}
