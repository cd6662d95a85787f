using RideAudit.Cli.Output;

namespace RideAudit.Cli.Tests.Output;

public class OutputFileTests
{
    [Fact]
    public void A_write_that_fails_half_way_leaves_the_old_file_whole_and_no_other()
    {
        using var folder = new TempFolder();
        var path = folder.Write("out.pdf", "old").At("out.pdf");
        Assert.Throws<UserError>(() => OutputFile.In(folder.Path, "out.pdf").Write(HalfThenFail, CancellationToken.None));
        Assert.Equal("old", File.ReadAllText(path));
        Assert.Equal(["out.pdf"], folder.Names());
    }

    [Fact]
    public void Ctrl_C_while_writing_leaves_no_file()
    {
        using var folder = new TempFolder();
        using var source = new CancellationTokenSource();
        Assert.Throws<OperationCanceledException>(() => OutputFile.In(folder.Path, "out.pdf").Write(
            s =>
            {
                s.Write("half"u8);
                source.Cancel();
            },
            source.Token));
        Assert.Empty(folder.Names());
    }

    [Fact]
    public void A_linked_file_is_replaced_where_it_lies()
    {
        if (OperatingSystem.IsWindows())
            return;
        using var folder = new TempFolder();
        var target = folder.Write("deep/real.pdf", "old").At("deep/real.pdf");
        File.CreateSymbolicLink(folder.At("link.pdf"), target);
        OutputFile.In(folder.Path, "link.pdf").Write(s => s.Write("new"u8), CancellationToken.None);
        Assert.Equal("new", File.ReadAllText(target));
        Assert.NotNull(new FileInfo(folder.At("link.pdf")).LinkTarget);
    }

    [Fact]
    public void What_a_killed_run_left_behind_is_cleared_away_and_what_another_run_is_writing_is_not()
    {
        using var folder = new TempFolder();
        folder.Write(".review.pdf.abcdefgh.rideaudit-part", "half");
        folder.Write(".notes.rideaudit-partly", "mine");
        OutputFile.In(folder.Path, "one.pdf").Write(
            one =>
            {
                one.Write("first"u8);
                OutputFile.In(folder.Path, "two.pdf").Write(two => two.Write("second"u8), CancellationToken.None);
            },
            CancellationToken.None);
        Assert.Equal([".notes.rideaudit-partly", "one.pdf", "two.pdf"], folder.Names());
        Assert.Equal("first", File.ReadAllText(folder.At("one.pdf")));
    }

    [Fact]
    public void Every_kind_of_output_knows_its_own_work_under_any_name_and_nobody_elses()
    {
        using var folder = new TempFolder();
        folder.Write("json", "{\n  \"schema\": \"rideaudit-review/1\",\n");
        folder.Write("calendar", "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//RideAudit//rideaudit next//EN\r\n");
        folder.Write("other.json", "{ \"schema\": \"other/1\" }");
        folder.Write("scan", "%PDF-1.4 of a scanner");
        Assert.True(OutputKind.Json.Wrote(folder.At("json")));
        Assert.True(OutputKind.Calendar.Wrote(folder.At("calendar")));
        Assert.False(OutputKind.Json.Wrote(folder.At("other.json")));
        Assert.False(OutputKind.Pdf.Wrote(folder.At("scan")));
        Assert.False(OutputKind.Calendar.Wrote(folder.At("json")));
    }

    private static void HalfThenFail(Stream stream)
    {
        stream.Write("half"u8);
        throw new IOException("The disk is full.");
    }
}
