using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Held;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Units;

namespace RideAudit.Tests.Sessions;

/// <summary>Weeks planned and ridden, each with the answer that any coach would give: common practice, no source.</summary>
public class HeldWeekTests
{
    private static readonly LocalDate Monday = new(2026, 5, 18);
    private static readonly string[] Days = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"];

    private const string Plan = "mon rest, tue high 60, wed endurance 60, thu threshold 60, sat long 180, sun endurance 90";

    [Theory]
    // As planned.
    [InlineData(Plan, "tue high 60, wed endurance 60, thu threshold 60, sat long 180, sun endurance 90", "")]
    [InlineData(Plan, "tue high 66, wed endurance 52, thu threshold 58, sat long 190, sun endurance 100", "")]
    // Two days swapped.
    [InlineData(Plan, "tue endurance 60, wed high 60, thu threshold 60, sat long 180, sun endurance 90", "tue high moved wed; wed endurance moved tue")]
    [InlineData(Plan, "tue high 60, wed endurance 60, thu threshold 60, sat endurance 90, sun long 180", "sat long moved sun; sun endurance moved sat")]
    [InlineData(Plan, "tue threshold 60, wed endurance 60, thu high 60, sat long 180, sun endurance 90", "tue high easier tue; thu threshold harder thu")]
    // One session on another day.
    [InlineData(Plan, "tue high 60, wed endurance 60, fri threshold 60, sat long 180, sun endurance 90", "thu threshold moved fri")]
    [InlineData(Plan, "mon high 60, wed endurance 60, thu threshold 60, sat long 180, sun endurance 90", "mon rest rest_ridden mon; tue high moved mon")]
    // Everything a day later, and what did not fit any more left out.
    [InlineData("mon high 60, tue endurance 60, wed threshold 60, fri endurance 60, sat long 180", "tue high 60, wed endurance 60, thu threshold 60, sat endurance 60, sun long 180",
        "mon high moved tue; tue endurance moved wed; wed threshold moved thu; fri endurance moved sat; sat long moved sun")]
    [InlineData("tue high 60, wed endurance 60, thu threshold 60, sun long 180", "wed high 60, thu endurance 60, fri threshold 60",
        "tue high moved wed; wed endurance moved thu; thu threshold moved fri; sun long missed")]
    // Cut short, made longer.
    [InlineData(Plan, "tue high 60, wed endurance 60, thu threshold 60, sat endurance 110, sun endurance 90", "sat long shorter sat")]
    [InlineData(Plan, "tue high 60, wed endurance 35, thu threshold 60, sat long 180, sun endurance 90", "wed endurance shorter wed")]
    [InlineData(Plan, "tue high 60, wed endurance 60, thu threshold 60, sat long 180, sun long 170", "sun endurance longer sun")]
    [InlineData(Plan, "tue high 40, wed endurance 60, thu threshold 60, sat long 180, sun endurance 90", "tue high shorter tue")]
    // Harder, easier.
    [InlineData(Plan, "tue high 60, wed endurance 60, thu threshold 60, sat threshold 180, sun endurance 90", "sat long harder sat")]
    [InlineData(Plan, "tue high 60, wed threshold 60, thu threshold 60, sat long 180, sun endurance 90", "wed endurance harder wed")]
    [InlineData(Plan, "tue endurance 60, wed endurance 60, thu threshold 60, sat long 180, sun endurance 90", "tue high easier tue")]
    [InlineData(Plan, "tue high 60, wed recovery 60, thu threshold 60, sat long 180, sun endurance 90", "wed endurance easier wed")]
    [InlineData("sat endurance 120", "sat high 130", "sat endurance harder sat")]
    // A club ride that turned hard, and longer.
    [InlineData("sat endurance 120, sun long 180", "sat high 170, sun long 180", "sat endurance longer,harder sat")]
    // Two short rides for one long, and two sessions for two rides.
    [InlineData("sat long 180", "sat endurance 100, sat endurance 80", "")]
    [InlineData("wed endurance 60", "wed endurance 30, wed endurance 30", "")]
    [InlineData("wed endurance 30, wed endurance 30", "wed endurance 30, wed endurance 30", "")]
    [InlineData("wed endurance 30, wed endurance 30", "wed endurance 30", "wed endurance missed")]
    [InlineData("wed high 60, wed recovery 30", "wed high 60, wed recovery 30", "")]
    // A commute nobody planned, a ride added.
    [InlineData(Plan, "tue high 60, tue recovery 25, wed endurance 60, thu threshold 60, sat long 180, sun endurance 90", "tue recovery added")]
    [InlineData(Plan, "tue high 60, wed endurance 60, thu threshold 60, fri endurance 60, sat long 180, sun endurance 90", "fri endurance added")]
    [InlineData(Plan, "tue high 60, wed endurance 60, thu threshold 60, fri high 60, sat long 180, sun endurance 90", "fri high added")]
    // Missed, one and all.
    [InlineData(Plan, "tue high 60, wed endurance 60, sat long 180, sun endurance 90", "thu threshold missed")]
    [InlineData(Plan, "tue high 60, wed endurance 60, thu threshold 60, sun endurance 90", "sat long missed")]
    [InlineData(Plan, "", "tue high missed; wed endurance missed; thu threshold missed; sat long missed; sun endurance missed")]
    // Ill from Wednesday on.
    [InlineData(Plan, "tue high 60", "wed endurance missed; thu threshold missed; sat long missed; sun endurance missed")]
    // Rest ridden, and rest with a short spin.
    [InlineData(Plan, "mon endurance 90, tue high 60, wed endurance 60, thu threshold 60, sat long 180, sun endurance 90", "mon rest rest_ridden mon; mon endurance added")]
    [InlineData(Plan, "mon recovery 40, tue high 60, wed endurance 60, thu threshold 60, sat long 180, sun endurance 90", "mon recovery added")]
    // An event is what the race makes of it.
    [InlineData("thu recovery 30, sat event, sun rest", "thu recovery 30, sat high 95", "")]
    [InlineData("sat event 300", "sat long 320", "")]
    [InlineData("sat event", "", "sat event missed")]
    // A ride that nothing tells of is nobody's fault.
    [InlineData("wed high 60", "wed unrated 60", "")]
    public void Each_session_is_held_against_what_was_ridden_as_a_coach_would(string planned, string ridden, string expected)
    {
        var lines = HeldWeek.Of(Sessions(planned), Rides(ridden), _ => null);

        Assert.Equal(expected, string.Join("; ", lines.Where(l => l.Outcomes is not [HeldOutcome.Done]).Select(Plain)));
        Assert.All(lines, l => Assert.Matches(@"^[A-Z].*[^ ]\.$", l.Sentence));
        Assert.Equal(Sessions(planned).Length, lines.Count(l => l.Planned is not null));
        Assert.Equal(lines.Select(l => l.Date).Order(), lines.Select(l => l.Date));
    }

    [Fact]
    public void The_sentences_say_what_happened_without_praise_or_blame()
    {
        string[] sentences = [.. HeldWeek.Of(
            Sessions("mon rest, tue high 60, wed endurance 60, thu threshold 60, sat long 180, sun endurance 90"),
            Rides("mon endurance 80, wed high 60, thu high 85, sat endurance 60, sat endurance 50, sun endurance 90"),
            date => date == Monday.PlusDays(2) ? ExceptionKind.Ill : null).Select(l => l.Sentence.Replace('\u00A0', ' '))];

        Assert.Equal(
            [
                "Monday was to be rest: 1 h 20 min ridden.",
                "Tuesday’s high session: ridden on Wednesday.",
                "Wednesday’s endurance ride: ridden on Monday; longer, 1 h 20 min where 1 h were planned.",
                "Thursday’s threshold session: longer, 1 h 25 min where 1 h were planned; harder than meant, a high ride.",
                "Saturday’s long ride: ridden in two rides; shorter, 1 h 50 min of 3 h.",
                "Sunday’s endurance ride: done.",
            ],
            sentences);
    }

    [Fact]
    public void A_session_missed_while_ill_says_so() =>
        Assert.Equal("Wednesday’s hills: not ridden, ill.", Assert.Single(HeldWeek.Of(
            [new PlannedSession { Date = Monday.PlusDays(2), Kind = PlannedKind.High, Minutes = 60, Session = "hills" }], [], _ => ExceptionKind.Ill)).Sentence);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void The_assignment_is_the_cheapest_there_is(int seed)
    {
        var random = new Random(seed);
        for (var round = 0; round < 300; round++)
        {
            var size = random.Next(1, 7);
            var costs = new double[size, size];
            for (var i = 0; i < size * size; i++)
                costs[i / size, i % size] = random.Next(0, 9);
            var found = LeastCost.Assign(costs);
            Assert.Equal(Enumerable.Range(0, size), found.Order());
            Assert.Equal(Cheapest(costs, 0, 0), Enumerable.Range(0, size).Sum(row => costs[row, found[row]]), 9);
        }
    }

    /// <summary>Every way there is, tried one after another.</summary>
    private static double Cheapest(double[,] costs, int row, int used) => row == costs.GetLength(0)
        ? 0
        : Enumerable.Range(0, costs.GetLength(0)).Where(c => (used >> c & 1) == 0).Min(c => costs[row, c] + Cheapest(costs, row + 1, used | 1 << c));

    private static string Plain(HeldLine line)
    {
        var what = line.Planned is { } planned ? PlannedKinds.WordOf(planned.Kind) : line.Rides[0].Kind.ToString().ToLowerInvariant();
        var outcomes = string.Join(',', line.Outcomes.Select(o => o == HeldOutcome.RestRidden ? "rest_ridden" : o.ToString().ToLowerInvariant()));
        var on = line.Planned is null || line.RiddenOn is not { } date ? "" : $" {Days[Period.DaysBetween(Monday, date)]}";
        return $"{Days[Period.DaysBetween(Monday, line.Date)]} {what} {outcomes}{on}";
    }

    private static ImmutableArray<PlannedSession> Sessions(string text) =>
        [.. Words(text).Select(w => new PlannedSession { Date = Day(w[0]), Kind = Enum.Parse<PlannedKind>(w[1], true), Minutes = w.Length > 2 ? int.Parse(w[2]) : null })];

    private static ImmutableArray<RideFigures> Rides(string text) =>
        [.. Words(text).Select((w, i) => new RideFigures
        {
            File = $"{i}.fit",
            StartsAt = Day(w[0]).At(new LocalTime(8 + i, 0)).WithOffset(Offset.Zero),
            DurationSeconds = int.Parse(w[2]) * 60,
            ElapsedSeconds = int.Parse(w[2]) * 60,
            Kind = Enum.Parse<RideKind>(w[1], true),
        })];

    private static IEnumerable<string[]> Words(string text) => text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(r => r.Split(' '));

    private static LocalDate Day(string word) => Monday.PlusDays(Array.IndexOf(Days, word));
}
