using NodaTime;
using RideAudit.Figures;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Tests.Rules;

/// <summary>How changes are said, and which of two is the smaller.</summary>
public sealed class ChangeSentenceTests
{
    private static readonly LocalDate Monday = Sample.Monday;
    private static readonly RideFigures[] Rides =
        [On(1, RideKind.High, 60), On(3, RideKind.Threshold, 75), On(5, RideKind.Endurance, 60, 9), On(5, RideKind.High, 60, 15), On(6, RideKind.Endurance, 100, 9)];

    private static readonly WeekFacts Week = Sample.Review(Rides, Sample.Plan()).Week;

    public static TheoryData<string, string> Said { get; } = new()
    {
        { "Move 0 4", "Tuesday’s ride on Friday instead" },
        { "Move 0 4, Move 1 0", "Tuesday’s ride on Friday and Thursday’s ride on Monday instead" },
        { "Move 0 4, Ease 1", "Tuesday’s ride on Friday instead and Thursday’s ride ridden easy for the same time" },
        { "Ease 1, Move 0 4", "Thursday’s ride ridden easy for the same time and Tuesday’s ride on Friday instead" },
        { "Ease 0", "Tuesday’s ride ridden easy for the same time" },
        { "Ease 3", "Saturday’s 15:00 ride ridden easy for the same time" },
        { "Ease 0, LeaveOut 4", "Tuesday’s ride ridden easy for the same time and Sunday’s ride left out" },
        { "Ease 0, Ease 3", "Tuesday’s ride and Saturday’s 15:00 ride ridden easy for the same time" },
        { "Ease 1, Ease 0", "Tuesday’s and Thursday’s rides ridden easy for the same time" },
        { "Lengthen 4", "Sunday’s ride lengthened to 2 h 30 min at its own easy pace" },
        { "RideLong 1", "Thursday’s ride ridden as the long ride, 2 h 30 min and all of it easy," },
        { "RideLong 0, RideLong 1", "Tuesday’s ride ridden as the long ride, 2 h 30 min and all of it easy, and Thursday’s ride ridden as the long ride, 2 h 30 min and all of it easy," },
        { "Swap 1 0, Swap 0 1", "Tuesday’s and Thursday’s rides swapped" },
        { "Swap 0 3, Swap 3 0", "Tuesday’s ride and Saturday’s 15:00 ride swapped" },
        { "Swap 3 4, Swap 4 3", "Saturday’s 15:00 ride and Sunday’s ride swapped" },
    };

    [Theory]
    [MemberData(nameof(Said))]
    public void A_change_is_said_in_a_sentence(string changes, string sentence) =>
        Assert.Equal($"{sentence} would have kept the weekly-hours rule.", ChangeSentence.For([.. changes.Split(", ").Select(Read)], [new WeeklyHours()], Week).Plain());

    /// <summary>Key sessions, then stress, then the new day, the old day, the file and what is done; one change before two that begin alike.</summary>
    [Fact]
    public void Of_two_changes_the_smaller_comes_first()
    {
        var (a, b) = (new RideChange(ChangeKind.Move, "a", Monday, Monday.PlusDays(2), null), new RideChange(ChangeKind.Move, "b", Monday.PlusDays(1), Monday.PlusDays(2), null));
        ChangeCandidate[] inOrder =
        [
            Candidate(0, 10, b with { To = Monday.PlusDays(1) }),
            Candidate(0, 10, a with { Ride = "z" }),
            Candidate(0, 10, b with { Ride = "a", Kind = ChangeKind.Swap }),
            Candidate(0, 10, b),
            Candidate(0, 10, b, b),
            Candidate(0, 10, b, b with { Kind = ChangeKind.Swap }),
            Candidate(0, 10, b with { Kind = ChangeKind.Ease }),
            Candidate(0, 10, b with { To = Monday.PlusDays(3) }),
            Candidate(0, 10.1, a),
            Candidate(1, 1, a),
        ];

        for (var i = 0; i < inOrder.Length; i++)
        {
            for (var j = 0; j < inOrder.Length; j++)
                Assert.Equal(i.CompareTo(j), Math.Sign(ChangeCandidate.Compare(inOrder[i], inOrder[j])));
        }
        Assert.Equal(0, ChangeCandidate.Compare(Candidate(0, 10, a), Candidate(0, 10 + 1e-8, a)));
    }

    /// <summary>A ride without stress counts as the same time ridden easy.</summary>
    [Fact]
    public void What_a_change_moves_is_its_rides_stress_and_what_it_adds_or_takes_the_difference()
    {
        var bare = On(1, RideKind.High, 90) with { Stress = null };
        var candidates = new ChangeClasses(Sample.Review([bare, On(6, RideKind.Endurance, 120, 9)], Sample.Plan(3))).InOrder.SelectMany(c => c).Where(c => c.Changes.Length == 1).ToArray();
        var easy = 120 / 60.0 * 0.65 * 0.65 * 100;

        Assert.All(candidates.Where(c => c.Changes[0].Kind == ChangeKind.Move && c.Changes[0].Ride == bare.File), c => Assert.Equal(1.5 * 42.25, c.MovedStress, 9));
        Assert.Equal(0, candidates.Single(c => c.Changes[0].Kind == ChangeKind.Ease).MovedStress, 9);
        Assert.Equal(easy, candidates.Single(c => c.Changes[0].Kind == ChangeKind.LeaveOut).MovedStress, 9);
        Assert.Contains(candidates, c => c.Changes[0].Kind == ChangeKind.Move && c.Changes[0].Ride == bare.File);
    }

    private static ChangeCandidate Candidate(int keys, double stress, params RideChange[] changes) => new([.. changes], Week, keys, stress);

    private static RideChange Read(string change)
    {
        var parts = change.Split(' ');
        var (kind, ride) = (Enum.Parse<ChangeKind>(parts[0]), Rides[int.Parse(parts[1])]);
        var to = kind switch
        {
            ChangeKind.Swap => Rides[int.Parse(parts[2])].Date,
            ChangeKind.Move => Monday.PlusDays(int.Parse(parts[2])),
            _ => ride.Date,
        };
        return new RideChange(kind, ride.File, ride.Date, to, kind is ChangeKind.Lengthen or ChangeKind.RideLong ? 150 : null);
    }

    private static RideFigures On(int day, RideKind kind, int minutes, int hour = 18) => Sample.Ride(Monday.PlusDays(day), kind, minutes, hour);
}
