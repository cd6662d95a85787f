using RideAudit.Cli.Output;
using RideAudit.Ingest;

namespace RideAudit.Cli.Tests.Commands;

public class FolderLookTests
{
    [Fact]
    public void A_FIT_file_cut_short_is_not_whole()
    {
        using var folder = new TempFolder();
        var bytes = File.ReadAllBytes(Path.Combine(Repository.Demo, "2026-06-17-group.fit"));
        File.WriteAllBytes(folder.At("whole.fit"), bytes);
        File.WriteAllBytes(folder.At("part.fit"), bytes[..^1]);
        File.WriteAllBytes(folder.At("head.fit"), bytes[..5]);
        var look = FolderLook.Take(folder.Path)!;
        Assert.True(look[folder.At("whole.fit")].Whole);
        Assert.False(look[folder.At("part.fit")].Whole);
        Assert.False(look[folder.At("head.fit")].Whole);
    }

    [Fact]
    public void What_the_program_writes_itself_and_hidden_files_are_not_looked_at()
    {
        using var folder = new TempFolder();
        folder.Write("a.csv", "x");
        folder.Write("review-2026-06-15.pdf", "x");
        folder.Write(".review-2026-06-15.pdf.abc.rideaudit-part", "x");
        folder.Write("review.json", "x");
        Assert.Equal([folder.At("a.csv")], FolderLook.Take(folder.Path)!.Keys);
    }

    // What is written into the folder would otherwise set off the next review, for ever.
    [Fact]
    public void No_ending_that_an_output_may_have_among_ride_files_is_looked_at()
    {
        using var folder = new TempFolder();
        foreach (var kind in new[] { OutputKind.Pdf, OutputKind.Png, OutputKind.Json, OutputKind.Calendar })
            folder.Write("latest" + kind.Ending, "x");
        Assert.Empty(FolderLook.Take(folder.Path)!);
    }

    [Fact]
    public void A_folder_that_is_not_there_gives_nothing() => Assert.Null(FolderLook.Take(Path.Combine(Path.GetTempPath(), Path.GetRandomFileName())));
}
