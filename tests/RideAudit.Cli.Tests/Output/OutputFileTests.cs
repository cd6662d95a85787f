using RideAudit.Cli.Output;

namespace RideAudit.Cli.Tests.Output;

public class OutputFileTests
{
    [Fact]
    public void A_write_that_fails_half_way_leaves_the_old_file_whole_and_no_other()
    {
        using var folder = new TempFolder();
        var path = folder.Write("out.pdf", "old").At("out.pdf");
        Assert.Throws<UserError>(() => OutputFile.Write(path, HalfThenFail, CancellationToken.None));
        Assert.Equal("old", File.ReadAllText(path));
        Assert.Equal(["out.pdf"], folder.Names());
    }

    [Fact]
    public void Ctrl_C_while_writing_leaves_no_file()
    {
        using var folder = new TempFolder();
        using var source = new CancellationTokenSource();
        Assert.Throws<OperationCanceledException>(() => OutputFile.Write(
            folder.At("out.pdf"),
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
        OutputFile.Write(folder.At("link.pdf"), s => s.Write("new"u8), CancellationToken.None);
        Assert.Equal("new", File.ReadAllText(target));
        Assert.NotNull(new FileInfo(folder.At("link.pdf")).LinkTarget);
    }

    private static void HalfThenFail(Stream stream)
    {
        stream.Write("half"u8);
        throw new IOException("The disk is full.");
    }
}
