using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Output;

public class TableTests
{
    [Theory]
    [InlineData(80, true, "rides-80.txt")]
    [InlineData(160, true, "rides-160.txt")]
    [InlineData(80, false, "rides-80-ascii.txt")]
    public void Rides_read_as_approved(int width, bool unicode, string golden) =>
        Check(golden, width, unicode, page => RideTable.Write(page, Samples.Rides().Rides, []));

    [Theory]
    [InlineData(80, true, "weeks-80.txt")]
    [InlineData(160, true, "weeks-160.txt")]
    public void Weeks_read_as_approved(int width, bool unicode, string golden) =>
        Check(golden, width, unicode, page => WeekTable.Write(page, Samples.Weeks().Weeks));

    [Theory]
    [InlineData(80, true, "rules-80.txt")]
    [InlineData(160, true, "rules-160.txt")]
    [InlineData(80, false, "rules-80-ascii.txt")]
    public void Rules_read_as_approved(int width, bool unicode, string golden) =>
        Check(golden, width, unicode, page => RuleTable.Write(page, Samples.Rules().Rules), measure: 110);

    [Theory]
    [InlineData(64)]
    [InlineData(80)]
    [InlineData(100)]
    [InlineData(160)]
    public void A_table_of_long_names_in_any_script_fits_the_terminal(int width)
    {
        var rides = Samples.Rides().Rides.Select((r, i) => r with { File = $"{string.Concat(Enumerable.Repeat("サイクリング/", i * 3))}ride.fit" }).ToList();
        using var shell = new TestShell(width);
        RideTable.Write(new Page(shell.Shell, width), rides, []);
        Assert.All(shell.Out.Split('\n'), l => Assert.True(Cells.Of(l) <= width, $"{Cells.Of(l)}: {l}"));
        Assert.All(shell.Out.Split('\n').Skip(2).Where(l => l.Length > 0), l => Assert.EndsWith(".fit", l, StringComparison.Ordinal));
    }

    private static void Check(string golden, int width, bool unicode, Action<Page> write, int? measure = null)
    {
        using var shell = new TestShell(width, unicode);
        write(new Page(shell.Shell, measure ?? width));
        Assert.All(shell.Out.Split('\n'), l => Assert.True(Cells.Of(l) <= width, l));
        Golden.Check(golden, shell.Out);
    }
}
