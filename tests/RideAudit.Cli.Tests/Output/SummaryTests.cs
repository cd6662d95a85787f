using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Output;

public class SummaryTests
{
    [Theory]
    [InlineData(80, true, "summary-80.txt")]
    [InlineData(160, true, "summary-160.txt")]
    [InlineData(80, false, "summary-80-ascii.txt")]
    public void The_summary_reads_as_approved(int width, bool unicode, string golden) =>
        Golden.Check(golden, Written(width, unicode, colour: false));

    [Fact]
    public void The_summary_of_a_week_with_three_things_to_change_fits_one_screen_of_80_by_24()
    {
        var sample = Samples.Review();
        Assert.Equal(3, sample.Summary.ToChange.Length);
        var document = sample with { Notices = [sample.Notices[2]] };
        using var shell = new TestShell();
        Summary.Write(new Page(shell.Shell, 100), document, ["review-2026-06-08.pdf"]);
        var lines = shell.Out.TrimEnd('\n').Split('\n');
        Assert.True(lines.Length <= 24, $"{lines.Length} lines");
        Assert.All(lines, l => Assert.True(Cells.Of(l) <= 80, l));
    }

    [Fact]
    public void Without_Unicode_every_character_is_ASCII() =>
        Assert.All(Written(80, unicode: false, colour: false), c => Assert.True(char.IsAscii(c), $"'{c}'"));

    [Fact]
    public void Colours_change_nothing_but_colours()
    {
        var coloured = Written(80, unicode: true, colour: true);
        Assert.Contains("\u001b[", coloured, StringComparison.Ordinal);
        Assert.Equal(Written(80, unicode: true, colour: false), Ansi.Strip(coloured));
    }

    [Fact]
    public void Every_unusable_file_is_named_with_its_reason()
    {
        var text = Written(80, unicode: true, colour: false);
        Assert.Contains("notes.csv: The table has no time column", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_name_cannot_send_commands_to_the_terminal()
    {
        var document = Samples.Review() with { Notices = [new("\u001b]0;x\u0007.fit", "not a ride", null, "It is not a ride.", Unusable: true)] };
        using var shell = new TestShell();
        Summary.Write(new Page(shell.Shell, 100), document, []);
        Assert.DoesNotContain('\u001b', shell.Out);
    }

    private static string Written(int width, bool unicode, bool colour)
    {
        using var shell = new TestShell(width, unicode, colour);
        Summary.Write(new Page(shell.Shell, 100), Samples.Review(), ["review-2026-06-08.pdf"]);
        return shell.Out;
    }
}
