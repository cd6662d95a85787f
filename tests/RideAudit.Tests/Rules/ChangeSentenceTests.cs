using NodaTime;
using RideAudit.Figures;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Tests.Rules;

/// <summary>How changes are said.</summary>
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
