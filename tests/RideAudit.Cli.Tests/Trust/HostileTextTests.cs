using System.Text.Json;
using RideAudit.Cli.Output;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Trust;

/// <summary>Text from other people reaches no terminal, table, page or calendar as anything but text.</summary>
public sealed class HostileTextTests
{
    [Fact]
    public void No_control_or_turning_mark_of_a_label_a_log_a_note_or_a_file_name_reaches_an_output()
    {
        using var folder = new TempFolder();
        var rides = Demo.CopyTo(folder, riderFile: false);
        folder.Write("rides/rider.toml", File.ReadAllText(Path.Combine(Repository.Demo, "rider.toml")).Replace("\"Rider A\"", $"\"=Rider {HostileText.Escaped}\"", StringComparison.Ordinal));
        folder.Write("rides/log.csv", $"date,minutes,kind,note,{HostileText.All}\n2026-06-19,50,easy,\"{HostileText.All}\n=1+1\",{HostileText.All}\n2026-06-18,x{HostileText.All},{HostileText.All},,\n");
        folder.Write("rides/note.md", $"Well {HostileText.All} ridden\r\n=cmd\n");
        folder.Write($"rides/{HostileText.All}\n.fit", File.ReadAllBytes(Directory.EnumerateFiles(rides, "*.fit").First())[..300]);
        var made = Outputs.Of(rides, folder.At("out"), Demo.AsOf);
        Assert.Equal(18, made.Count);
        foreach (var (name, bytes) in made)
            HostileText.AssertHarmless(name, bytes);
        // It was in the inputs: the JSON still says what stood there, escaped.
        using var document = JsonDocument.Parse(made["review.json"]);
        Assert.Contains("\u202Egnp", document.RootElement.GetProperty("rider").GetProperty("label").GetString(), StringComparison.Ordinal);
    }

    // OWASP, CSV Injection: cells that begin with =, +, -, @, tab or carriage return; an apostrophe before them keeps a spreadsheet from running them.
    [Theory]
    [InlineData("=1+1")]
    [InlineData("+1")]
    [InlineData("-1+cmd")]
    [InlineData("@sum")]
    [InlineData("\t=1")]
    [InlineData("\r=1")]
    public void A_cell_that_a_spreadsheet_would_run_is_written_as_text(string cell)
    {
        var ride = Samples.Rides().Rides[0] with { File = cell };
        using var written = new StringWriter();
        CsvTable.Write(written, CsvFields.Rides, [ride]);
        var row = written.ToString().Split("\r\n")[1];
        Assert.DoesNotContain(row.TrimStart('"')[0], "=+-@\t\r");
    }

    [Fact]
    public void A_number_below_zero_stays_a_number()
    {
        using var written = new StringWriter();
        CsvTable.Write(written, CsvFields.Rides, [Samples.Rides().Rides[0] with { HeartRateDriftPercent = -1.5 }]);
        Assert.Contains(",-1.5,", written.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_label_and_a_rider_file_of_a_megabyte_are_refused_in_a_sentence()
    {
        using var folder = new TempFolder();
        var rides = Demo.CopyTo(folder, riderFile: false);
        var rider = File.ReadAllText(Path.Combine(Repository.Demo, "rider.toml"));
        Refused(rider.Replace("Rider A", new string('R', 900_000), StringComparison.Ordinal), "label: a short text");
        Refused(rider + new string('#', 2 << 20), "larger than the 1024 KB");

        void Refused(string riderFile, string sentence)
        {
            folder.Write("rides/rider.toml", riderFile);
            using var shell = new TestShell(folder: folder.Path);
            Assert.Equal(2, shell.Run("review", rides, "--as-of", Demo.AsOf, "--pdf", "review.pdf"));
            Assert.Contains(sentence, shell.Error, StringComparison.Ordinal);
            Assert.InRange(shell.Error.Length, 1, 1000);
        }
    }

    [Fact]
    public void A_note_of_a_megabyte_is_left_out_with_a_sentence_and_the_week_is_reviewed()
    {
        using var folder = new TempFolder();
        var rides = Demo.CopyTo(folder);
        folder.Write("rides/note.md", new string('n', 1 << 20));
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal(0, shell.Run("review", rides, "--as-of", Demo.AsOf, "--no-pdf"));
        Assert.Contains("larger than the 64 KB", shell.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("nnnn", shell.Out, StringComparison.Ordinal);
    }
}
