using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Tests.Support;
using RideAudit.Document;
using RideAudit.Testing.Samples;

namespace RideAudit.Cli.Tests.Output;

public class PlainReviewTests
{
    [Fact]
    public void The_text_reads_as_approved() => Golden.Check("text.txt", Written(160, true));

    public static IEnumerable<object[]> Names => SampleReviews.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void No_line_is_longer_than_80_columns(string name) => AssertNarrow(SampleReviews.All[name]());

    [Theory]
    [InlineData("Αθλήτρια Β της ομάδας Θεσσαλονίκης ", "Καλή εβδομάδα, αλλά δύο δύσκολες μέρες μαζί. ")]
    [InlineData("選手あ二番東京都世田谷区自転車部", "よく走りました。水曜日は休み、土曜日に長い距離を楽に走ること。")]
    [InlineData("선수가나다라마바사 ", "수요일은 쉬고 토요일에 길게 타세요. ")]
    [InlineData("e\u0301a\u0308o\u0302 ", "A letter and its accent are one column: e\u0301e\u0301e\u0301e\u0301. ")]
    [InlineData("ARiderWithoutAnySpaceInALabelThatIsLongerThanALine", "Averylongwordwithoutanyspacethatnolineofeightycolumnscouldeverholdinonepieceandthatmustbecutsomewhere. ")]
    public void Wide_letters_accents_and_words_without_end_keep_to_80_columns_too(string label, string note)
    {
        var middle = SampleReviews.Middle();
        string Long(string text, int times) => string.Concat(Enumerable.Repeat(text, times));
        var file = Long(label, 4) + ".fit";
        AssertNarrow(middle with
        {
            Rider = middle.Rider with { Label = Long(label, 5) },
            Note = $"{Long(note, 12)}\n\n- {Long(note, 6)}\n- **{Long(note, 3)}**",
            Summary = middle.Summary with { Headline = Long(note, 4), ToChange = [.. middle.Summary.ToChange.Select(a => a with { Title = Long(note, 3) })] },
            Rides = [.. middle.Rides.Select((r, i) => i == 0 ? r with { File = file, Remarks = [Long(note, 4)] } : r)],
            Notices = [.. middle.Notices.Select(n => n with { File = file, Sentence = Long(note, 5) })],
        });
    }

    private static void AssertNarrow(ReviewDocument review)
    {
        using var shell = new TestShell(160, true);
        PlainReview.Write(new Page(shell.Shell, PlainReview.Measure), review);
        Assert.All(shell.Out.Split('\n'), l => Assert.True(Cells.Of(l) <= 80, $"{Cells.Of(l)}: {l}"));
    }

    [Fact]
    public void Every_finding_notice_and_caution_is_in_the_text()
    {
        var document = Samples.Review();
        var text = Written(160, true).ReplaceLineEndings(" ");
        while (text.Contains("  ", StringComparison.Ordinal))
            text = text.Replace("  ", " ", StringComparison.Ordinal);
        Assert.All(document.Findings.Select(f => f.Sentence), s => Assert.Contains(s, text, StringComparison.Ordinal));
        Assert.All(document.Findings.Select(f => f.Rule), s => Assert.Contains(s, text, StringComparison.Ordinal));
        Assert.All(document.Notices.Select(n => n.Sentence), s => Assert.Contains(s, text, StringComparison.Ordinal));
        Assert.All(document.Summary.Cautions, s => Assert.Contains(s, text, StringComparison.Ordinal));
        Assert.All(document.Rides.Select(r => r.File), s => Assert.Contains(s, text, StringComparison.Ordinal));
    }

    [Fact]
    public void The_text_can_be_ASCII_alone() =>
        Assert.All(Written(80, false), c => Assert.True(char.IsAscii(c), $"'{c}'"));

    private static string Written(int width, bool unicode)
    {
        using var shell = new TestShell(width, unicode);
        PlainReview.Write(new Page(shell.Shell, PlainReview.Measure), Samples.Review());
        return shell.Out;
    }
}
