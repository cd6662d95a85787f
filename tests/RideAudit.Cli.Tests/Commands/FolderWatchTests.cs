using NodaTime;
using RideAudit.Cli.Commands;
using RideAudit.Ingest;

namespace RideAudit.Cli.Tests.Commands;

public class FolderWatchTests
{
    private static readonly Instant Start = Instant.FromUtc(2026, 6, 22, 7, 0);
    private readonly FolderWatch _watch = new(Duration.FromSeconds(2), Duration.FromSeconds(60));

    [Fact]
    public void What_is_there_at_the_start_is_reviewed_once()
    {
        Assert.Equal(FolderWatch.Step.Wait, Look(0, ("a", 10)));
        Assert.Equal(FolderWatch.Step.Wait, Look(1, ("a", 10)));
        Assert.Equal(FolderWatch.Step.Review, Look(2, ("a", 10)));
        Assert.Equal(FolderWatch.Step.Wait, Look(3, ("a", 10)));
        Assert.Equal(FolderWatch.Step.Wait, Look(600, ("a", 10)));
    }

    [Fact]
    public void A_burst_of_files_is_one_review()
    {
        Reviewed();
        Assert.Equal(FolderWatch.Step.Wait, Look(10, ("a", 10), ("b", 1)));
        Assert.Equal(FolderWatch.Step.Wait, Look(11, ("a", 10), ("b", 9), ("c", 1)));
        Assert.Equal(FolderWatch.Step.Wait, Look(12.5, ("a", 10), ("b", 9), ("c", 9)));
        Assert.Equal(FolderWatch.Step.Wait, Look(14, ("a", 10), ("b", 9), ("c", 9)));
        Assert.Equal(FolderWatch.Step.Review, Look(14.5, ("a", 10), ("b", 9), ("c", 9)));
        Assert.Equal(FolderWatch.Step.Wait, Look(20, ("a", 10), ("b", 9), ("c", 9)));
    }

    [Fact]
    public void A_file_whose_header_promises_more_is_waited_for()
    {
        Reviewed();
        Assert.Equal(FolderWatch.Step.Wait, LookAtPart(10, 100));
        Assert.Equal(FolderWatch.Step.Wait, LookAtPart(20, 100));
        Assert.Equal(FolderWatch.Step.Wait, Look(30, ("a", 10), ("b", 200)));
        Assert.Equal(FolderWatch.Step.Review, Look(32, ("a", 10), ("b", 200)));
    }

    [Fact]
    public void A_file_that_never_becomes_whole_is_reviewed_as_it_is_in_the_end()
    {
        Reviewed();
        Assert.Equal(FolderWatch.Step.Wait, LookAtPart(10, 100));
        Assert.Equal(FolderWatch.Step.Wait, LookAtPart(69, 100));
        Assert.Equal(FolderWatch.Step.Review, LookAtPart(70, 100));
    }

    [Fact]
    public void A_folder_that_goes_away_and_comes_back_is_told_once_each_and_not_reviewed_again_when_it_comes_back_unchanged()
    {
        Reviewed();
        Assert.Equal(FolderWatch.Step.Gone, _watch.Next(null, At(10)));
        Assert.Equal(FolderWatch.Step.Wait, _watch.Next(null, At(11)));
        Assert.Equal(FolderWatch.Step.Back, Look(20, ("a", 10)));
        Assert.Equal(FolderWatch.Step.Wait, Look(23, ("a", 10)));
        Assert.Equal(FolderWatch.Step.Gone, _watch.Next(null, At(30)));
    }

    [Fact]
    public void A_file_taken_away_is_a_change()
    {
        Assert.Equal(FolderWatch.Step.Wait, Look(0, ("a", 10), ("b", 10)));
        Assert.Equal(FolderWatch.Step.Review, Look(2, ("a", 10), ("b", 10)));
        Assert.Equal(FolderWatch.Step.Wait, Look(3, ("a", 10)));
        Assert.Equal(FolderWatch.Step.Review, Look(5, ("a", 10)));
    }

    private void Reviewed()
    {
        Look(0, ("a", 10));
        Assert.Equal(FolderWatch.Step.Review, Look(2, ("a", 10)));
    }

    private FolderWatch.Step Look(double second, params (string Name, long Length)[] files) =>
        _watch.Next(files.ToDictionary(f => f.Name, f => new FolderLook.FileState(f.Length, Start, Whole: true)), At(second));

    private FolderWatch.Step LookAtPart(double second, long length) => _watch.Next(
        new() { ["a"] = new FolderLook.FileState(10, Start, Whole: true), ["b"] = new FolderLook.FileState(length, Start, Whole: false) }, At(second));

    private static Instant At(double second) => Start + Duration.FromSeconds(second);
}
