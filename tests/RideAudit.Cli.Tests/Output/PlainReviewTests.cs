using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Output;

public class PlainReviewTests
{
    [Fact]
    public void The_text_reads_as_approved() => Golden.Check("text.txt", Written(160, true));

    [Fact]
    public void No_line_is_longer_than_80_columns() =>
        Assert.All(Written(160, true).Split('\n'), l => Assert.True(Cells.Of(l) <= 80, l));

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
