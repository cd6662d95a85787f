using NodaTime;
using RideAudit.Fit;
using RideAudit.Fit.Messages;
using RideAudit.Plan.Blocks;
using RideAudit.Sessions;
using RideAudit.Units;

namespace RideAudit.Tests.Sessions;

public class WorkoutFileTests
{
    private static readonly LocalDate Day = new(2026, 5, 19);
    private static readonly SessionMeasures Watts = new(new Watts(250), 168);

    /// <summary>The files that the official decoder reads as well (tests/crosschecks).</summary>
    private static readonly (string Name, string Blocks, int Minutes, SessionMeasures Measures)[] Samples =
    [
        ("four-fours-in-watts", "15 min easy, 4 x 4 min 108-112 %, 3 min easy between, easy to the end", 60, Watts),
        ("four-fours-in-beats", "15 min easy, 4 x 4 min 108-112 %, 3 min easy between, easy to the end", 60, new(null, 168)),
        ("four-fours-by-feel", "15 min easy, 4 x 4 min 108-112 %, 3 min easy between, easy to the end", 60, default),
        ("two-sets-of-forty-twenty", "15 min easy, 2 x (8 x 40/20 s 126-132 %), 6 min easy between, easy to the end", 60, Watts),
        ("sprints", "15 min easy, 12 x 12 s all out, 2 min 30 s easy between, easy to the end", 60, Watts),
    ];

    [Fact]
    public void Repeats_targets_and_times_are_written_as_the_protocol_says()
    {
        var part = Read(Samples[0]);

        Assert.Equal(FitFileType.Workout, part.FileId!.Type);
        Assert.Equal(new FitWorkout("four-fours-in-watts", 2, 6), part.Workout);
        Assert.Equal(
            [
                "0 easy 0:900000 4 0 1138-1163 2",
                "1  0:240000 4 0 1270-1280 0",
                "2 easy 0:180000 4 0 1138-1163 4",
                "3  6:1 2 3 - ",
                "4  0:240000 4 0 1270-1280 0",
                "5 easy 0:1200000 4 0 1138-1163 3",
            ],
            part.WorkoutSteps.Select(Plain));
        Assert.Empty(part.Faults);
    }

    [Fact]
    public void Beats_carry_their_own_offset_and_feel_is_a_name_without_a_target()
    {
        Assert.Equal("1  0:240000 1 0 271-273 0", Plain(Read(Samples[1]).WorkoutSteps[1]));
        Assert.Equal("1 feel 8 of 10 0:240000 2  - 0", Plain(Read(Samples[2]).WorkoutSteps[1]));
    }

    [Fact]
    public void Sets_are_written_out_and_the_repeats_within_them_repeated()
    {
        var steps = Read(Samples[3]).WorkoutSteps;

        Assert.Equal(9, steps.Count);
        Assert.Equal([(3, 1u, 8u), (7, 5u, 8u)], steps.Where(s => s.DurationType == FitWorkoutStep.RepeatUntilStepsComplete).Select(s => ((int)s.Index!.Value, s.DurationValue!.Value, s.TargetValue!.Value)));
    }

    [Fact]
    public void Every_workout_of_the_library_plays_the_seconds_of_its_session()
    {
        foreach (var session in SessionLibrary.All)
        {
            var fitted = FittedSession.Fit(session.Blocks, session.ShortestDay + 7)!;
            foreach (var measures in new[] { Watts, new(null, 168), default })
            {
                var part = Read(session.Name, fitted, measures);
                Assert.Equal(fitted.Steps.Select(s => s.Seconds), Played(part.WorkoutSteps).Select(s => (int)(s.DurationValue!.Value / 1000)));
                Assert.Equal(part.WorkoutSteps.Count, (int)part.Workout!.Steps!.Value);
            }
        }
    }

    [Fact]
    public void The_committed_workouts_are_what_is_written_today()
    {
        foreach (var sample in Samples)
        {
            var path = Repository.Path("testdata", "workouts", sample.Name + ".fit");
            var bytes = Bytes(sample);
            if (Repository.Updates)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                File.WriteAllBytes(path, bytes);
            }
            Assert.Equal(bytes, File.ReadAllBytes(path));
        }
    }

    /// <summary>What a device does: a repeat step goes back until the steps before it were ridden so often.</summary>
    private static IEnumerable<FitWorkoutStep> Played(IReadOnlyList<FitWorkoutStep> steps)
    {
        var rounds = new Dictionary<int, uint>();
        for (var at = 0; at < steps.Count; at++)
        {
            if (steps[at].DurationType != FitWorkoutStep.RepeatUntilStepsComplete)
            {
                yield return steps[at];
                continue;
            }
            rounds[at] = rounds.GetValueOrDefault(at) + 1;
            if (rounds[at] < steps[at].TargetValue)
                at = (int)steps[at].DurationValue!.Value - 1;
        }
    }

    private static string Plain(FitWorkoutStep s) => FormattableString.Invariant(
        $"{s.Index} {s.Name} {s.DurationType}:{s.DurationValue} {s.TargetType} {s.TargetValue} {s.TargetLow}-{s.TargetHigh} {s.Intensity}");

    private static byte[] Bytes((string Name, string Blocks, int Minutes, SessionMeasures Measures) sample) =>
        WorkoutFile.Write(FittedSession.Fit(SessionBlocks.Read(sample.Blocks, out _)!, sample.Minutes)!, sample.Name, Day, sample.Measures);

    private static FitPart Read((string Name, string Blocks, int Minutes, SessionMeasures Measures) sample) =>
        Assert.Single(FitDecoder.Decode(Bytes(sample)).Parts);

    private static FitPart Read(string name, FittedSession session, SessionMeasures measures) =>
        Assert.Single(FitDecoder.Decode(WorkoutFile.Write(session, name, Day, measures)).Parts);
}
