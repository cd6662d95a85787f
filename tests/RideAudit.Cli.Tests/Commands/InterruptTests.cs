using System.Diagnostics;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Commands;

/// <summary>Ctrl-C on the real program.</summary>
public class InterruptTests
{
    private static readonly (string, string)[] Plain = [("LANG", "C.UTF-8"), ("TZ", "UTC")];

    [Fact]
    public void A_watch_reviews_once_at_the_start_again_for_a_new_file_and_stops_with_130_on_Ctrl_C()
    {
        if (OperatingSystem.IsWindows())
            return;
        using var folder = new TempFolder();
        var rides = Demo.CopyTo(folder, from: "2026-06-20");
        using var process = RealProgram.Start(folder.Path, Plain, "watch", "rides", "--as-of", Demo.AsOf);
        WaitFor(process, "Reviewed at");
        File.Delete(folder.At("review-2026-06-15.pdf"));
        File.Copy(Path.Combine(Repository.Demo, "2026-06-16-intervals.fit"), Path.Combine(rides, "new.fit"));
        WaitFor(process, "Reviewed at");
        Assert.True(File.Exists(folder.At("review-2026-06-15.pdf")));
        Interrupt(process);
        Assert.Equal(130, process.ExitCode);
        Assert.Equal(["review-2026-06-15.pdf"], folder.Names().Where(n => !n.StartsWith("rides", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_watched_roster_is_reviewed_whole_again_for_a_new_file_of_one_rider_and_not_for_its_own_table()
    {
        if (OperatingSystem.IsWindows())
            return;
        using var folder = new TempFolder();
        Demo.CopyTo(folder, "riders/a", from: "2026-06-20");
        Demo.CopyTo(folder, "riders/b", from: "2026-06-20");
        using var process = RealProgram.Start(folder.Path, Plain, "watch", "riders", "--out", "riders/desk", "--as-of", Demo.AsOf);
        WaitFor(process, "Reviewed at");
        var first = File.ReadAllText(folder.At("riders/desk/overview.csv"));
        Assert.Contains("\nb,", first, StringComparison.Ordinal);
        File.Copy(Path.Combine(Repository.Demo, "2026-06-16-intervals.fit"), folder.At("riders/b/new.fit"));
        WaitFor(process, "Reviewed at");
        Assert.NotEqual(first, File.ReadAllText(folder.At("riders/desk/overview.csv")));
        // Another pass would begin within the few seconds that files are given to settle.
        var written = File.GetLastWriteTimeUtc(folder.At("riders/desk/overview.csv"));
        Thread.Sleep(TimeSpan.FromSeconds(5));
        Interrupt(process);
        Assert.Equal((130, written), (process.ExitCode, File.GetLastWriteTimeUtc(folder.At("riders/desk/overview.csv"))));
    }

    [Theory]
    [InlineData("watch riders --pdf one.pdf")]
    [InlineData("watch riders --text")]
    [InlineData("watch riders/a --out desk")]
    public void A_watch_refuses_what_is_not_for_the_folder_it_is_given(string line)
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, "riders/a", from: "2026-06-20");
        using var shell = new TestShell(folder: folder.Path, cancel: new CancellationToken(canceled: true));
        Assert.Equal(2, shell.Run(line.Split(' ')));
        Assert.Contains("folder of riders", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_watched_folder_may_go_away_and_come_back()
    {
        if (OperatingSystem.IsWindows())
            return;
        using var folder = new TempFolder();
        var rides = Demo.CopyTo(folder, from: "2026-06-20");
        using var process = RealProgram.Start(folder.Path, Plain, "watch", "rides", "--as-of", Demo.AsOf);
        WaitFor(process, "Reviewed at");
        Directory.Move(rides, folder.At("elsewhere"));
        WaitFor(process, "has gone away");
        File.Copy(Path.Combine(Repository.Demo, "2026-06-16-intervals.fit"), folder.At("elsewhere/new.fit"));
        Directory.Move(folder.At("elsewhere"), rides);
        WaitFor(process, "Reviewed at");
        Interrupt(process);
        Assert.Equal(130, process.ExitCode);
    }

    [Theory]
    [InlineData("review rides")]
    [InlineData("rides rides")]
    [InlineData("roster .")]
    [InlineData("next rides --ics x.ics")]
    public void Ctrl_C_while_reading_ends_with_130_and_leaves_no_file(string line)
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-20");
        using var shell = new TestShell(folder: folder.Path, cancel: new CancellationToken(canceled: true));
        Assert.Equal(130, shell.Run(line.Split(' ')));
        Assert.Equal("", shell.Out);
        Assert.DoesNotContain(Directory.EnumerateFiles(folder.Path, "*", SearchOption.AllDirectories), f => !f.StartsWith(folder.At("rides"), StringComparison.Ordinal));
    }

    // A program that never says the words must not hold the tests up for ever.
    private static void WaitFor(Process process, string words)
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromMinutes(5));
        using var end = patience.Token.Register(process.Kill);
        while (process.StandardError.ReadLine() is { } line)
            if (line.Contains(words, StringComparison.Ordinal))
                return;
        Assert.Fail($"The program ended before it said '{words}'.");
    }

    private static void Interrupt(Process process)
    {
        using var kill = Process.Start("kill", ["-INT", process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);
        kill.WaitForExit();
        process.StandardError.ReadToEnd();
        process.WaitForExit();
    }
}
