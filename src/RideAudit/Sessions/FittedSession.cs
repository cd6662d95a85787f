using System.Collections.Immutable;
using RideAudit.Plan.Blocks;

namespace RideAudit.Sessions;

/// <summary>A session fitted to the time of a day: every stretch has its length.</summary>
public sealed record FittedSession
{
    /// <summary>Its blocks; none goes to the end any more.</summary>
    public required SessionBlocks Blocks { get; init; }

    /// <summary>The same as steps, every repeat written out.</summary>
    public required ImmutableArray<SessionStep> Steps { get; init; }

    /// <summary>Its length, s.</summary>
    public int Seconds => Steps.Sum(s => s.Seconds);

    /// <summary>Its length, whole min.</summary>
    public int Minutes => Seconds / 60;

    /// <summary>Told in heart rate.</summary>
    public bool InHeartRate => Steps.Any(s => s.Effort.Measure == EffortMeasure.HeartRateShare);

    /// <summary>Fits a session to a day. Warm-up and cool-down stretch and shrink, the work does not.</summary>
    /// <param name="blocks">The session.</param>
    /// <param name="minutes">The day's time, min.</param>
    /// <returns>Null when the work does not fit.</returns>
    public static FittedSession? Fit(SessionBlocks blocks, int minutes) =>
        SessionFit.Fit(blocks.Items, minutes * 60) is { } items ? new FittedSession { Blocks = new(items), Steps = StepsOf(items) } : null;

    /// <summary>The shortest day that a session fits, min.</summary>
    /// <param name="blocks">The session.</param>
    public static int LeastMinutes(SessionBlocks blocks) => (SessionFit.LeastSeconds(blocks.Items) + 59) / 60;

    private static ImmutableArray<SessionStep> StepsOf(ImmutableArray<Block> items)
    {
        var steps = new List<SessionStep>();
        foreach (var item in items)
            Add(item, steps);
        if (steps.TrueForAll(s => EffortShares.IsEasy(s.Effort)))
            return [.. steps.Select((s, i) => s with { Role = steps.Count > 1 && i == 0 ? StepRole.WarmUp : StepRole.Work })];
        for (var i = 0; i < steps.Count && EffortShares.IsEasy(steps[i].Effort); i++)
            steps[i] = steps[i] with { Role = StepRole.WarmUp };
        for (var i = steps.Count - 1; i >= 0 && EffortShares.IsEasy(steps[i].Effort); i--)
            steps[i] = steps[i] with { Role = StepRole.CoolDown };
        return [.. steps];
    }

    private static void Add(Block block, List<SessionStep> steps)
    {
        if (block is Block.Stretch { Seconds: { } seconds } stretch)
            steps.Add(new SessionStep(seconds, stretch.Effort, EffortShares.IsEasy(stretch.Effort) ? StepRole.Between : StepRole.Work));
        if (block is not Block.Repeat repeat)
            return;
        for (var round = 0; round < repeat.Count; round++)
        {
            if (round > 0 && repeat.Between is { } between)
                Add(between, steps);
            foreach (var inside in repeat.Inside)
                Add(inside, steps);
        }
    }
}
