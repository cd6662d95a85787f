using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Tests.Support;
using RideAudit.Formatting;
using RideAudit.Testing.Samples;

namespace RideAudit.Cli.Tests.Output;

public class RosterPageTests
{
    [Theory]
    [InlineData(24, true)]
    [InlineData(40, true)]
    [InlineData(40, false)]
    [InlineData(80, true)]
    [InlineData(80, false)]
    [InlineData(160, true)]
    public void No_line_is_over_the_width_and_nobody_and_no_fact_is_lost(int width, bool unicode)
    {
        var roster = SampleRosters.EveryState();
        var text = Written(width, unicode);
        Assert.All(text.Split('\n'), line => Assert.True(Cells.Of(line) <= width, line));
        Assert.True(unicode || text.All(char.IsAscii), text);
        var words = Joined(text);
        Assert.All(roster.Riders, rider => Assert.Contains(Joined(Marked($"{rider.Label}{(rider.Label == rider.Folder ? "" : $" ({rider.Folder})")}, {Words.Of(rider.Need)}", unicode)), words, StringComparison.Ordinal));
        Assert.All(roster.Riders.SelectMany(rider => rider.Facts.Append(rider.Why)), said => Assert.Contains(Joined(Marked(said, unicode)), words, StringComparison.Ordinal));
        Assert.All(roster.Shared, shared => Assert.Contains(Joined($"{shared.Name}, {Words.Of(shared.Verdict)}: "), words, StringComparison.Ordinal));
    }

    [Fact]
    public void The_matrix_has_a_mark_a_rule_under_the_letter_that_the_key_explains()
    {
        var roster = SampleRosters.EveryState();
        var lines = Written(80, true).Split('\n');
        Assert.Equal("  a b c d e f g h i j k l m n o p q r", lines[2]);
        for (var i = 0; i < roster.Riders.Length; i++)
        {
            var rider = roster.Riders[i];
            var marks = rider.Verdicts.IsEmpty ? new string(' ', 36) : string.Concat(rider.Verdicts.Select(v => new Marks(true).Of(v.Verdict) + " "));
            Assert.Equal($"{i + 1} {marks} {rider.Label}, {Words.Of(rider.Need)}", lines[3 + i]);
        }
        Assert.Contains("a hard day spacing, b hard day count,", string.Join(' ', lines), StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_is_a_character_as_high_as_its_share_of_the_heaviest()
    {
        var marks = new Marks(true);
        Assert.Equal("·▁▄▅█?", string.Concat(new double?[] { 0, 0.01, 0.5, 0.51, 1, null }.Select(marks.Bar)));
        Assert.Equal(".159?", string.Concat(new double?[] { 0, 0.01, 0.5, 1, null }.Select(new Marks(false).Bar)));
    }

    private static string Written(int width, bool unicode)
    {
        using var shell = new TestShell(width, unicode);
        RosterPage.Write(new Page(shell.Shell, 100), SampleRosters.EveryState(), "desk");
        return shell.Out;
    }

    private static string Marked(string text, bool unicode) => new Marks(unicode).Show(text);

    private static string Joined(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
