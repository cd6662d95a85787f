using System.IO.Compression;
using RideAudit.Cli.BrowserPage;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Commands;

/// <summary>What happens when things are dropped on the program's icon.</summary>
public class DropTests
{
    [Fact]
    public void Several_folders_give_a_review_each_and_what_is_wrong_with_one_stays_with_it()
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, "a/rides", from: "2026-06-20");
        Demo.CopyTo(folder, "b/rides", from: "2026-06-20");
        folder.Write("c/one.fit", "not a ride");
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal(3, shell.Run("a/rides", "c", "b/rides", "--as-of", Demo.AsOf));
        Assert.Equal(["rides-2-review-2026-06-15.pdf", "rides-review-2026-06-15.pdf"], folder.Names().Where(n => n.EndsWith(".pdf", StringComparison.Ordinal)));
        Assert.Contains("No usable ride in c", shell.Error, StringComparison.Ordinal);
        Assert.Equal(2, shell.Out.Split("Wrote ").Length - 1);
    }

    [Fact]
    public void Several_folders_and_one_file_to_write_is_refused()
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, "a", from: "2026-06-20");
        Demo.CopyTo(folder, "b", from: "2026-06-20");
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal(2, shell.Run("a", "b", "--pdf", "x.pdf"));
        Assert.Contains("--pdf, --json, --png and --page-png name one file: give one folder with them.", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_is_reviewed_with_the_rider_file_beside_it()
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-20");
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal((0, ""), (shell.Run("rides/2026-06-21-tempo.fit", "--as-of", Demo.AsOf), shell.Error));
        Assert.Contains("Rider A", shell.Out, StringComparison.Ordinal);
        Assert.True(File.Exists(folder.At("review-2026-06-15.pdf")));
    }

    [Fact]
    public void A_zip_is_reviewed_as_the_folder_in_it_would_be()
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-15");
        Directory.CreateDirectory(folder.At("zipped"));
        File.Move(folder.At("rides/rider.toml"), folder.At("zipped/rider.toml"));
        ZipFile.CreateFromDirectory(folder.At("rides"), folder.At("zipped/rides.zip"));
        using var shell = new TestShell(folder: folder.Path);
        using var unpacked = new TestShell(folder: folder.Path);
        Assert.Equal(0, shell.Run("rides", "zipped/rides.zip", "--as-of", Demo.AsOf, "--format", "csv"));
        Assert.Equal(0, unpacked.Run("rides", "rides", "--rider", "zipped", "--as-of", Demo.AsOf, "--format", "csv"));
        Assert.Equal(unpacked.Out, shell.Out.Replace("rides.zip/", "", StringComparison.Ordinal));
    }

    [Fact]
    public void Where_the_current_folder_cannot_be_written_the_PDF_goes_beside_what_is_reviewed()
    {
        if (!Directory.Exists("/sys/kernel"))
            return;
        using var folder = new TempFolder();
        var rides = Demo.CopyTo(folder, from: "2026-06-20");
        using var shell = new TestShell(folder: "/sys/kernel");
        Assert.Equal((0, ""), (shell.Run(rides, "--as-of", Demo.AsOf), shell.Error));
        Assert.True(File.Exists(folder.At("review-2026-06-15.pdf")));
        Assert.Contains(Path.GetFileName(folder.Path), shell.Out[shell.Out.IndexOf("Wrote", StringComparison.Ordinal)..], StringComparison.Ordinal);
    }

    [Fact]
    public void And_where_that_cannot_be_written_either_it_goes_to_the_documents_or_is_refused_before_reading()
    {
        if (!Directory.Exists("/sys/kernel"))
            return;
        using var folder = new TempFolder();
        Directory.CreateDirectory(folder.At("documents"));
        using var with = new TestShell(folder: "/sys/kernel", documents: folder.At("documents"));
        Assert.Equal(3, with.Run("/sys/kernel/mm"));
        using var without = new TestShell(folder: "/sys/kernel", cancel: new CancellationToken(canceled: true));
        Assert.Equal(2, without.Run("/sys/kernel/mm"));
        Assert.Equal(
            "rideaudit: The PDF cannot be written to the current folder, /sys/kernel: you may not write there. Choose another place. With --pdf you name a place.\n", without.Error);
    }

    [Theory]
    [InlineData("./rides --as-of 2026-06-22", 0, 1)]
    [InlineData("./rides --as-of 2026-06-22 --no-pdf", 0, 0)]
    [InlineData("no-such-folder", 2, 0)]
    [InlineData("review --paper a5", 2, 0)]
    public void A_window_of_its_own_stays_until_a_key_is_pressed_and_shows_the_PDF(string line, int code, int opened)
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-20");
        using var shell = new TestShell(folder: folder.Path, ownsWindow: true);
        Assert.Equal(code, shell.Run(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)));
        Assert.Equal(Enumerable.Repeat(folder.At("review-2026-06-15.pdf"), opened), shell.Opened);
        Assert.Equal(1, shell.KeysWaitedFor);
        Assert.EndsWith("Press a key to close this window.\n", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_double_click_opens_the_page_that_the_build_carries_and_shows_the_help_of_one_that_carries_none()
    {
        using var folder = new TempFolder();
        using var shell = new TestShell(folder: folder.Path, ownsWindow: true);
        Assert.Equal(CarriedPage.IsThere ? 0 : 2, shell.Run());
        Assert.Equal(CarriedPage.IsThere ? [folder.At("rideaudit.html")] : [], shell.Opened);
        Assert.Equal(1, shell.KeysWaitedFor);
        Assert.EndsWith("Press a key to close this window.\n", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void In_somebody_elses_window_nothing_is_opened_and_nothing_waits()
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-20");
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal(0, shell.Run("./rides", "--as-of", Demo.AsOf));
        Assert.Equal(2, shell.Run());
        Assert.Equal((0, 0), (shell.Opened.Count, shell.KeysWaitedFor));
    }
}
