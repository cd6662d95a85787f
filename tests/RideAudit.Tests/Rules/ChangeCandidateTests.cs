using NodaTime;
using RideAudit.Rules.Changes;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Tests.Rules;

/// <summary>Which of two changes is the smaller, and what it costs.</summary>
public sealed class ChangeCandidateTests
{
    private static readonly LocalDate Monday = Sample.Monday;
    private static readonly WeekFacts Week = Sample.Week([]);

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
        var bare = Sample.Ride(Monday.PlusDays(1), RideKind.High, 90) with { Stress = null };
        var candidates = new ChangeClasses(Sample.Review([bare, Sample.Ride(Monday.PlusDays(6), RideKind.Endurance, 120, 9)], Sample.Plan(3))).InOrder.SelectMany(c => c).Where(c => c.Changes.Length == 1).ToArray();
        const double Easy = 2 * 42.25; // the ride’s own ratio is 0.65 too

        Assert.All(candidates.Where(c => c.Changes[0].Kind == ChangeKind.Move && c.Changes[0].Ride == bare.File), c => Assert.Equal(1.5 * 42.25, c.MovedStress, 9));
        Assert.Equal(0, candidates.Single(c => c.Changes[0].Kind == ChangeKind.Ease).MovedStress, 9);
        Assert.Equal(Easy, candidates.Single(c => c.Changes[0].Kind == ChangeKind.LeaveOut).MovedStress, 9);
        Assert.Contains(candidates, c => c.Changes[0].Kind == ChangeKind.Move && c.Changes[0].Ride == bare.File);
    }

    private static ChangeCandidate Candidate(int keys, double stress, params RideChange[] changes) => new([.. changes], Week, keys, stress);
}
