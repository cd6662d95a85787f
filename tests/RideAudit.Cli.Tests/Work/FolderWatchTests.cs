using NodaTime;
using RideAudit.Cli.Work;

namespace RideAudit.Cli.Tests.Work;

public class FolderWatchTests
{
    private static readonly Instant Start = Instant.FromUtc(2026, 6, 22, 7, 0);
    private readonly FolderWatch _watch = new(Duration.FromSeconds(2), Duration.FromSeconds(60));

    [Fact]
    public void What_is_there_at_the_start_is_reviewed_once()
    {
        Assert.Equal(WatchStep.Wait, Look(0, ("a", 10)));
        Assert.Equal(WatchStep.Wait, Look(1, ("a", 10)));
        Assert.Equal(WatchStep.Review, Look(2, ("a", 10)));
        Assert.Equal(WatchStep.Wait, Look(3, ("a", 10)));
        Assert.Equal(WatchStep.Wait, Look(600, ("a", 10)));
    }

    [Fact]
    public void A_burst_of_files_is_one_review()
    {
        Reviewed();
        Assert.Equal(WatchStep.Wait, Look(10, ("a", 10), ("b", 1)));
        Assert.Equal(WatchStep.Wait, Look(11, ("a", 10), ("b", 9), ("c", 1)));
        Assert.Equal(WatchStep.Wait, Look(12.5, ("a", 10), ("b", 9), ("c", 9)));
        Assert.Equal(WatchStep.Wait, Look(14, ("a", 10), ("b", 9), ("c", 9)));
        Assert.Equal(WatchStep.Review, Look(14.5, ("a", 10), ("b", 9), ("c", 9)));
        Assert.Equal(WatchStep.Wait, Look(20, ("a", 10), ("b", 9), ("c", 9)));
    }

    [Fact]
    public void A_file_whose_header_promises_more_is_waited_for()
    {
        Reviewed();
        Assert.Equal(WatchStep.Wait, LookAtPart(10, 100));
        Assert.Equal(WatchStep.Wait, LookAtPart(20, 100));
        Assert.Equal(WatchStep.Wait, Look(30, ("a", 10), ("b", 200)));
        Assert.Equal(WatchStep.Review, Look(32, ("a", 10), ("b", 200)));
    }

    [Fact]
    public void A_file_that_never_becomes_whole_is_reviewed_as_it_is_in_the_end()
    {
        Reviewed();
        Assert.Equal(WatchStep.Wait, LookAtPart(10, 100));
        Assert.Equal(WatchStep.Wait, LookAtPart(69, 100));
        Assert.Equal(WatchStep.Review, LookAtPart(70, 100));
    }

    [Fact]
    public void A_folder_that_goes_away_and_comes_back_is_told_once_each_and_not_reviewed_again_when_it_comes_back_unchanged()
    {
        Reviewed();
        Assert.Equal(WatchStep.Gone, _watch.Next(null, At(10)));
        Assert.Equal(WatchStep.Wait, _watch.Next(null, At(11)));
        Assert.Equal(WatchStep.Back, Look(20, ("a", 10)));
        Assert.Equal(WatchStep.Wait, Look(23, ("a", 10)));
        Assert.Equal(WatchStep.Gone, _watch.Next(null, At(30)));
    }

    [Fact]
    public void A_file_taken_away_is_a_change()
    {
        Assert.Equal(WatchStep.Wait, Look(0, ("a", 10), ("b", 10)));
        Assert.Equal(WatchStep.Review, Look(2, ("a", 10), ("b", 10)));
        Assert.Equal(WatchStep.Wait, Look(3, ("a", 10)));
        Assert.Equal(WatchStep.Review, Look(5, ("a", 10)));
    }

    private void Reviewed()
    {
        Look(0, ("a", 10));
        Assert.Equal(WatchStep.Review, Look(2, ("a", 10)));
    }

    private WatchStep Look(double second, params (string Name, long Length)[] files) =>
        _watch.Next(files.ToDictionary(f => f.Name, f => new FileState(f.Length, Start, Whole: true)), At(second));

    private WatchStep LookAtPart(double second, long length) => _watch.Next(
        new() { ["a"] = new FileState(10, Start, Whole: true), ["b"] = new FileState(length, Start, Whole: false) }, At(second));

    private static Instant At(double second) => Start + Duration.FromSeconds(second);
}
