using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Tests.Support;
using RideAudit.Document.Layouts;
using RideAudit.Weeks;

namespace RideAudit.Cli.Tests.Output;

public class NextPageTests
{
    [Fact]
    public void A_week_has_a_line_a_session_and_one_for_a_day_of_rest()
    {
        var lines = Written(ToCome.Next(), 80).Split('\n');
        Assert.StartsWith("A layout for the week of 22 June 2026 · ISO week 26", lines[0], StringComparison.Ordinal);
        Assert.Equal("Rider A · 2.3 h of 6.5 h asked for, about 120 points of training stress", lines[1]);
        Assert.Contains("Mon 22  rest", lines);
        Assert.Contains(lines, l => l.StartsWith("Tue 23  high       1 h 15 min  Five fives. Warm up for 15 min", StringComparison.Ordinal));
        Assert.Contains("Wed 24  recovery       15 min  Very easy.", lines);
        Assert.Contains("        endurance      45 min  Easy.", lines);
        Assert.Contains("Sat 27  event                  The event.", lines);
        Assert.All(lines, l => Assert.True(Cells.Of(l) <= 80, l));
    }

    [Fact]
    public void The_rest_of_a_week_begun_says_what_is_ridden()
    {
        var week = ToCome.Next().Weeks[0];
        var begun = ToCome.Next() with
        {
            Weeks = [week with { From = ToCome.Monday.PlusDays(1), Days = week.Days.SetItem(0, week.Days[0] with { RiddenMinutes = 65, Kind = DayKind.Endurance }) }],
        };
        var text = Written(begun, 80);
        Assert.Contains("A layout for the rest of the week of", text, StringComparison.Ordinal);
        Assert.Contains("Mon 22  endurance   1 h 5 min  Ridden.\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_ride_says_how_much_shorter_or_longer_it_may_be()
    {
        var week = ToCome.Next().Weeks[0];
        var wide = week.Days[1].Sessions[0] with { Minutes = 50, MinutesFrom = 45, MinutesTo = 55 };
        var text = Written(ToCome.Next() with { Weeks = [week with { Days = week.Days.SetItem(1, week.Days[1] with { Sessions = [wide] }).SetItem(2, week.Days[1] with { Sessions = [wide with { MinutesTo = 65 }] }) }] }, 160);
        text = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("45 to 55 min will do.", text, StringComparison.Ordinal);
        Assert.Contains("45 min to 1 h 5 min will do.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_planned_week_says_that_it_was_planned() =>
        Assert.StartsWith("Planned for the week of", Written(ToCome.Next() with { Schema = NextDocument.Checked }, 80), StringComparison.Ordinal);

    private static string Written(NextDocument document, int width)
    {
        using var shell = new TestShell(width, unicode: true);
        NextPage.Write(new Page(shell.Shell, 100), document);
        return shell.Out;
    }
}
