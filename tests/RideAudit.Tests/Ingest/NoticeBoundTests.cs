using RideAudit.Ingest;
using RideAudit.Review;

namespace RideAudit.Tests.Ingest;

public sealed class NoticeBoundTests
{
    private static FileNotice[] Many(int count, string problem, bool unusable = true) =>
        [.. Enumerable.Range(0, count).Select(i => new FileNotice($"{i:D6}.fit", problem, null, $"Sentence {i}.", unusable))];

    [Fact]
    public void A_hundred_files_with_a_problem_are_all_named()
    {
        FileNotice[] few = [.. Many(NoticeBound.MostNamed, "not a ride"), .. Many(NoticeBound.MostNamed, "empty file")];
        Assert.Equal(few, NoticeBound.Of(few));
    }

    [Fact]
    public void Of_more_files_the_first_hundred_of_each_problem_are_named_and_the_others_counted()
    {
        FileNotice[] many = [.. Many(100_000, "not a ride"), .. Many(101, "empty file"), .. Many(3, "duplicate", unusable: false)];
        var bound = NoticeBound.Of(many);
        Assert.Equal(100 + 100 + 3 + 2, bound.Count);
        Assert.Equal(many[..100], bound.Take(100));
        Assert.Equal(many.Length, bound.Sum(n => n.OtherFiles > 0 ? n.OtherFiles : 1));
        Assert.Equal("99900\u00A0other files have the same problem as 100 that are named: not a ride.", bound[^2].Line);
        Assert.Equal("1\u00A0other file has the same problem as 100 that are named: empty file.", bound[^1].Line);
        Assert.True(bound[^1].Unusable);
    }

    [Fact]
    public void What_was_kept_of_a_recording_is_always_said()
    {
        FileNotice[] many = [.. Many(500, "truncated", unusable: false).Select(n => n with { Kept = "3000 records" })];
        Assert.Equal(many, NoticeBound.Of(many));
    }

    [Fact]
    public void Several_notices_of_one_file_stay_together()
    {
        FileNotice[] many = [.. Enumerable.Range(0, 300).Select(i => new FileNotice($"{i / 3:D3}.csv", "unreadable plan row", null, $"Row {i}.", false))];
        Assert.Equal(many, NoticeBound.Of(many));
    }

    // Otherwise a file of the judged week would be one of a count, and the week's line on its data would not name it.
    [Fact]
    public void Files_asked_for_first_are_named_wherever_their_names_sort()
    {
        FileNotice[] many = [.. Many(1000, "not a ride"), new FileNotice("z.fit", "not a ride", null, "Sentence.", true)];
        var bound = NoticeBound.Of(many, n => n.File == "z.fit");
        Assert.Contains(bound, n => n.File == "z.fit");
        Assert.Equal(901, bound[^1].OtherFiles);
    }

    [Fact]
    public void A_folder_of_broken_files_alone_is_told_in_a_hundred_lines_and_a_count()
    {
        var content = new FolderContent { FilesSeen = 5000, Recordings = [], Notices = [.. Many(5000, "not a ride")], TimeZone = "UTC" };
        var lines = NoRides.Sentence("rides", content).Split('\n');
        Assert.Equal(1 + 100 + 1, lines.Length);
        Assert.Contains("4900\u00A0other files have the same problem", lines[^1], StringComparison.Ordinal);
    }
}
