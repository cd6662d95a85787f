using System.Collections.Immutable;
using RideAudit.Figures;
using RideAudit.Sessions;
using RideAudit.Units;

namespace RideAudit.Held;

/// <summary>Finds the repeats of a planned session in the ride that was ridden for it.</summary>
/// <remarks>
/// Common practice, no source: the stretches of the planned lengths, in the planned order and with something between them, that hold the most power together.
/// So neither a longer warm-up nor a traffic light between two repeats nor a device without a lap button matters. Efforts that follow each other
/// without rest, as over and under threshold, are one repeat.
/// </remarks>
public static class HeldRepeats
{
    private const double LeastOfRest = 0.25;
    private const double EasyShare = 0.6;

    /// <summary>The repeats in order, each with what was ridden; empty for an easy session, for a ride without power or threshold, and for a session told in heart rate or by feel.</summary>
    /// <remarks>A repeat is ridden when its mean power is closer to what was meant than to easy riding. Of equal repeats those ridden count first.</remarks>
    /// <param name="planned">The session, fitted to its planned minutes.</param>
    /// <param name="ride">The ride.</param>
    public static ImmutableArray<HeldRepeat> Of(FittedSession planned, RideFigures ride)
    {
        if (ride is not { Power: { } power, Threshold.Power: var threshold } || Meant(planned, threshold) is not { IsEmpty: false } meant)
            return [];
        var samples = power.InFull();
        var starts = Starts(meant, samples);
        ImmutableArray<HeldRepeat> found = [.. meant.Select((m, i) => Ridden(m, i < starts.Length ? starts[i] : null, samples, threshold))];
        return meant.All(m => m.IsLike(meant[0])) ? [.. found.Where(r => r.RiddenW is not null), .. found.Where(r => r.RiddenW is null)] : found;
    }

    private static HeldRepeat Ridden(Part part, int? start, float[] samples, Watts threshold)
    {
        var mean = start is { } at ? Channel.Mean(samples.AsSpan(at, part.Seconds)) : double.NaN;
        var isRidden = mean >= (EasyShare * threshold.Value + part.MeantW) / 2;
        return new HeldRepeat(part.Seconds, part.LowW, part.HighW, isRidden ? mean : null, isRidden ? start : null);
    }

    /// <summary>The planned repeats; none where one is told in neither watts nor all out.</summary>
    private static ImmutableArray<Part> Meant(FittedSession planned, Watts threshold)
    {
        var parts = ImmutableArray.CreateBuilder<Part>();
        var rest = 0;
        var isOpen = false;
        foreach (var step in planned.Steps)
        {
            if (step.Role != StepRole.Work || EffortShares.IsEasy(step.Effort))
            {
                rest = (isOpen ? 0 : rest) + step.Seconds;
                isOpen = false;
                continue;
            }
            var target = EffortTarget.Of(step.Effort, step.Seconds, new SessionMeasures(threshold, null));
            if (target.In is not (EffortTarget.Unit.Watts or EffortTarget.Unit.None))
                return [];
            var meant = threshold.Value * EffortShares.At(step.Effort, step.Seconds / 2, step.Seconds) / 100;
            var isOut = target.In == EffortTarget.Unit.None;
            var part = new Part(step.Seconds, isOut ? null : target.Low, isOut ? null : target.High, meant, (int)(rest * LeastOfRest));
            if (isOpen)
                parts[^1] = parts[^1].Then(part);
            else
                parts.Add(part);
            isOpen = true;
        }
        return parts.ToImmutable();
    }

    /// <summary>Where each begins, so that their mean powers add up to the most; fewer where the ride is too short for all.</summary>
    private static int[] Starts(ImmutableArray<Part> parts, float[] samples)
    {
        var sums = new double[samples.Length + 1];
        for (var i = 0; i < samples.Length; i++)
            sums[i + 1] = sums[i] + (float.IsFinite(samples[i]) ? samples[i] : 0);
        var best = new List<(double[] Sum, int[] Start)>();
        foreach (var part in parts)
        {
            if (Best(part, sums, best.Count == 0 ? null : best[^1].Sum) is not { } found)
                break;
            best.Add(found);
        }
        var starts = new int[best.Count];
        var end = samples.Length;
        for (var i = best.Count - 1; i >= 0; i--)
        {
            starts[i] = best[i].Start[end];
            end = starts[i] - parts[i].RestBefore;
        }
        return starts;
    }

    /// <summary>For every end: the most that the repeats up to this one add up to, all of them over by then, and where this one begins.</summary>
    private static (double[] Sum, int[] Start)? Best(Part part, double[] sums, double[]? before)
    {
        var (sum, start) = (new double[sums.Length], new int[sums.Length]);
        Array.Fill(sum, double.NegativeInfinity);
        for (var end = part.Seconds; end < sums.Length; end++)
        {
            var at = end - part.Seconds;
            var earlier = before is null ? 0 : at >= part.RestBefore ? before[at - part.RestBefore] : double.NegativeInfinity;
            var all = earlier + (sums[end] - sums[at]) / part.Seconds;
            (sum[end], start[end]) = all > sum[end - 1] ? (all, at) : (sum[end - 1], start[end - 1]);
        }
        return double.IsFinite(sum[^1]) ? (sum, start) : null;
    }

    /// <summary>A planned repeat.</summary>
    private readonly record struct Part(int Seconds, double? LowW, double? HighW, double MeantW, int RestBefore)
    {
        public bool IsLike(Part other) => (Seconds, LowW, HighW) == (other.Seconds, other.LowW, other.HighW);

        /// <summary>One after the other without rest.</summary>
        public Part Then(Part next) => new(
            Seconds + next.Seconds,
            Over(LowW, next.LowW, next),
            Over(HighW, next.HighW, next),
            Over(MeantW, next.MeantW, next)!.Value,
            RestBefore);

        private double? Over(double? here, double? there, Part next) => (here * Seconds + there * next.Seconds) / (Seconds + next.Seconds);
    }
}
