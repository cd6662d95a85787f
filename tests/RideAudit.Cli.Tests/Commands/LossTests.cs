using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Commands;

/// <summary>Nothing that the program did not write itself is ever replaced by what it writes.</summary>
public class LossTests
{
    [Theory]
    [InlineData("review rides --pdf rides/2026-06-21-tempo.fit")]
    [InlineData("review rides --no-pdf --json rides/rider.toml")]
    [InlineData("review rides --no-pdf --png rides/2026-06-21-tempo.fit")]
    [InlineData("review rides --no-pdf --json rides/new.csv")]
    [InlineData("review rides --no-pdf --json notes.txt")]
    [InlineData("review rides --pdf notes.txt")]
    [InlineData("review rides --pdf link.pdf")]
    [InlineData("review rides --no-pdf --note note.json --json note.json")]
    [InlineData("review rides/2026-06-21-tempo.fit --pdf rides/2026-06-21-tempo.fit")]
    [InlineData("review rides --pdf same.pdf --json ./same.pdf")]
    [InlineData("watch rides --pdf rides/out.csv")]
    [InlineData("next rides --ics rides/2026-06-21-tempo.fit")]
    [InlineData("new-rider rides/2026-06-21-tempo.fit --overwrite")]
    [InlineData("roster . --out rides")]
    public void A_target_that_would_lose_something_is_refused_before_anything_is_read(string line)
    {
        using var folder = Folder();
        var before = Contents(folder);
        // Ctrl-C is down already: whoever came as far as reading would end with 130.
        using var shell = new TestShell(folder: folder.Path, cancel: new CancellationToken(canceled: true));
        Assert.Equal(2, shell.Run(line.Split(' ')));
        Assert.Equal("", shell.Out);
        Assert.Single(shell.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(before, Contents(folder));
    }

    [Theory]
    [InlineData("--pdf", "out")]
    [InlineData("--json", "out.txt")]
    public void What_the_program_wrote_under_another_ending_it_writes_again(string option, string name)
    {
        using var folder = Folder();
        string[] line = option == "--pdf" ? ["review", "rides", "--pdf", name] : ["review", "rides", "--no-pdf", option, name];
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal((0, ""), (shell.Run([.. line, "--as-of", Demo.AsOf]), shell.Error));
        Assert.Equal((0, ""), (shell.Run([.. line, "--as-of", Demo.AsOf]), shell.Error));
    }

    [Fact]
    public void A_place_that_cannot_be_written_is_one_clear_line_before_reading()
    {
        if (!Directory.Exists("/sys/kernel"))
            return;
        using var folder = Folder();
        using var shell = new TestShell(folder: folder.Path, cancel: new CancellationToken(canceled: true));
        Assert.Equal(2, shell.Run("review", "rides", "--pdf", "/sys/kernel/review.pdf"));
        Assert.Equal("rideaudit: /sys/kernel/review.pdf cannot be written: you may not write there. Choose another place.\n", shell.Error);
    }

    [Fact]
    public void Standard_output_that_is_full_ends_with_two_and_one_line()
    {
        if (!File.Exists("/dev/full"))
            return;
        using var folder = Folder();
        var ended = Bash.Run(folder.Path, "rideaudit rides rides --as-of 2026-06-22 > /dev/full");
        Assert.Equal((2, "rideaudit: Standard output could not be written: the disk is full. Make room, or choose another place.\n"), (ended.Code, ended.Error));
    }

    private static TempFolder Folder()
    {
        var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-20");
        folder.Write("notes.txt", "mine");
        folder.Write("note.json", "Easy week next.");
        if (!OperatingSystem.IsWindows())
            File.CreateSymbolicLink(folder.At("link.pdf"), folder.At("rides/2026-06-21-tempo.fit"));
        return folder;
    }

    private static IEnumerable<(string, string)> Contents(TempFolder folder) =>
        [.. folder.Names().Where(n => File.Exists(folder.At(n))).Select(n => (n, Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(folder.At(n))))))];
}
