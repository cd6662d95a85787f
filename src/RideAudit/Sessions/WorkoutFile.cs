using System.Collections.Immutable;
using NodaTime;
using RideAudit.Fit;
using RideAudit.Fit.Messages;
using RideAudit.Fit.Writing;
using RideAudit.Formatting;
using RideAudit.Plan.Blocks;

namespace RideAudit.Sessions;

/// <summary>A session as a FIT workout file that a head unit can play.</summary>
/// <remarks>
/// Repeats are written as the protocol's repeat steps, never one within another, because many devices do not know those: outer repeats are written out.
/// No serial number is written, and the time of making is that of the planned day, so that the same session gives the same bytes.
/// </remarks>
public static class WorkoutFile
{
    private const byte Cycling = 2;
    private const ushort NoManufacturer = 255;

    /// <summary>The bytes of the file.</summary>
    /// <param name="session">The session, fitted to its day.</param>
    /// <param name="date">Its day.</param>
    /// <param name="measures">What the rider knows: steps aim at watts, else beats, else nothing, with the feel as their name.</param>
    public static byte[] Write(FittedSession session, string name, LocalDate date, SessionMeasures measures)
    {
        var steps = new List<FitWorkoutStep>();
        var roles = new RoleOf(session.Steps);
        foreach (var item in session.Blocks.Items)
            Add(item, steps, roles, measures);
        var writer = new FitWriter();
        var noon = date.At(LocalTime.Noon).InUtc().ToInstant();
        writer.WriteFileId(new FitFileId(FitFileType.Workout, NoManufacturer, 0, FitTime.FromUnixSeconds(noon.ToUnixTimeSeconds())));
        writer.WriteWorkout(new FitWorkout(name, Cycling, (ushort)steps.Count));
        for (var i = 0; i < steps.Count; i++)
            writer.WriteWorkoutStep(steps[i] with { Index = (ushort)i });
        return writer.Finish();
    }

    private static void Add(Block block, List<FitWorkoutStep> steps, RoleOf roles, SessionMeasures measures)
    {
        switch (block)
        {
            case Block.Stretch { Seconds: { } seconds } stretch:
                steps.Add(StepOf(stretch.Effort, seconds, roles.Next(), measures));
                break;
            case Block.Repeat repeat when repeat.Inside.All(b => b is Block.Stretch):
                AddFlat(repeat, steps, roles, measures);
                break;
            case Block.Repeat repeat:
                for (var round = 0; round < repeat.Count; round++)
                {
                    if (round > 0 && repeat.Between is { } between)
                        Add(between, steps, roles, measures);
                    foreach (var inside in repeat.Inside)
                        Add(inside, steps, roles, measures);
                }
                break;
        }
    }

    /// <summary>Rounds with what lies between are repeated, the last round, with nothing after it, is written out.</summary>
    private static void AddFlat(Block.Repeat repeat, List<FitWorkoutStep> steps, RoleOf roles, SessionMeasures measures)
    {
        var between = repeat.Between;
        var repeated = between is null ? repeat.Count : repeat.Count - 1;
        var round = between is null ? repeat.Inside : [.. repeat.Inside, between];
        if (repeated > 0)
        {
            var first = steps.Count;
            foreach (var block in round)
                Add(block, steps, roles, measures);
            roles.Skip((repeated - 1) * round.Length);
            if (repeated > 1)
            {
                steps.Add(new FitWorkoutStep
                {
                    DurationType = FitWorkoutStep.RepeatUntilStepsComplete,
                    DurationValue = (uint)first,
                    TargetType = FitWorkoutStep.Open,
                    TargetValue = (uint)repeated,
                });
            }
        }
        if (between is null)
            return;
        foreach (var block in repeat.Inside)
            Add(block, steps, roles, measures);
    }

    private static FitWorkoutStep StepOf(Effort effort, int seconds, StepRole role, SessionMeasures measures)
    {
        var target = EffortTarget.Of(effort, seconds, measures);
        var step = new FitWorkoutStep
        {
            DurationType = FitWorkoutStep.Time,
            DurationValue = (uint)seconds * 1000,
            TargetType = FitWorkoutStep.Open,
            Intensity = role switch { StepRole.WarmUp => 2, StepRole.CoolDown => 3, StepRole.Between => 4, _ => 0 },
            Name = NameOf(effort, target),
        };
        return target.In switch
        {
            EffortTarget.Unit.Watts => WithRange(step, FitWorkoutStep.Power, target, FitWorkoutStep.PowerOffset),
            EffortTarget.Unit.Beats => WithRange(step, FitWorkoutStep.HeartRate, target, FitWorkoutStep.HeartRateOffset),
            _ => step,
        };
    }

    private static FitWorkoutStep WithRange(FitWorkoutStep step, byte type, EffortTarget target, uint offset) => step with
    {
        TargetType = type,
        TargetValue = 0,
        TargetLow = (uint)target.Low.Whole() + offset,
        TargetHigh = (uint)target.High.Whole() + offset,
    };

    private static string NameOf(Effort effort, EffortTarget target) => effort.Measure switch
    {
        EffortMeasure.Easy => "easy",
        EffortMeasure.VeryEasy => "very easy",
        EffortMeasure.AllOut => "all out",
        _ when target.In == EffortTarget.Unit.Feel => $"feel {Shown.Number(Math.Round((target.Low + target.High) / 2))} of 10".Replace(Shown.Joint, " "),
        _ => "",
    };

    /// <summary>The roles of the written-out steps, taken one after another.</summary>
    private sealed class RoleOf(ImmutableArray<SessionStep> steps)
    {
        private int _at;

        public StepRole Next() => steps[_at++].Role;

        public void Skip(int count) => _at += count;
    }
}
