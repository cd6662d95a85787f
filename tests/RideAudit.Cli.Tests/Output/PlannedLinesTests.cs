using NodaTime;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Tests.Support;
using RideAudit.Document;
using RideAudit.Held;
using RideAudit.Plan;

namespace RideAudit.Cli.Tests.Output;

public class PlannedLinesTests
{
    private const string Moved = "Thursday’s five fours: ridden on Wednesday. That put two hard days next to each other.";

    [Fact]
    public void The_text_has_a_line_a_session_within_80_columns()
    {
        var lines = Written(width: 160, all: true);
        Assert.Contains("- Tuesday’s four fives: done.", lines);
        Assert.Contains("- Thursday’s five fours: ridden on Wednesday. That put two hard days next to", lines);
        Assert.Contains("  each other.", lines);
        Assert.All(lines, l => Assert.True(Cells.Of(l) <= 80, l));
    }

    [Fact]
    public void The_summary_names_what_came_otherwise()
    {
        var lines = Written(width: 80, all: false);
        Assert.Contains("Planned and ridden", lines);
        Assert.DoesNotContain("- Tuesday’s four fives: done.", lines);
        Assert.Contains(lines, l => l.StartsWith("- Thursday’s five fours", StringComparison.Ordinal));
    }

    [Fact]
    public void A_week_without_a_plan_says_nothing_of_one() =>
        Assert.DoesNotContain(Written(80, all: true, planned: false), l => l.StartsWith("Planned and", StringComparison.Ordinal));

    private static string[] Written(int width, bool all, bool planned = true)
    {
        var document = Samples.Review();
        if (planned)
            document = document with { Week = document.Week with { Planned = new PlannedWeekEntry { Hours = 6, Stress = 300, Sessions = [] }, PlannedAndRidden = [Line("Tuesday’s four fives: done.", HeldOutcome.Done), Line(Moved, HeldOutcome.Moved)] } };
        using var shell = new TestShell(width, unicode: true);
        if (all)
            PlainReview.Write(new Page(shell.Shell, PlainReview.Measure), document);
        else
            Summary.Write(new Page(shell.Shell, 100), document, []);
        return shell.Out.Replace('\u00A0', ' ').Split('\n');
    }

    private static HeldEntry Line(string sentence, HeldOutcome outcome) => new()
    {
        Planned = new HeldEntry.PlannedPart(new LocalDate(2026, 5, 7), PlannedKind.High, 60, null),
        Rides = [],
        RiddenOn = null,
        Outcomes = [outcome],
        Sentence = sentence,
    };
}
