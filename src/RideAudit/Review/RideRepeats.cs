using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Figures;

namespace RideAudit.Review;

/// <summary>The repeats of a ride: its sustained stretches, those between which it was never easy taken as one.</summary>
/// <remarks>
/// Two stretches are one where no 30 s between them are under the low band's limit on 5 s means, there is no pause between them, and the mean over both
/// is still at or above the share. Stretches that mostly have no recovery between them are no repeats, nor those of which less than a third are half as long as the longest: a rolling road, a race. The lower share is looked at first:
/// it holds a repeat from end to end, and the higher one finds hard minutes inside a block at threshold. Common practice, no source; the seconds are our choice.
/// </remarks>
internal static class RideRepeats
{
    private const int EasyMeanSeconds = 5;
    private const int ShortestRecoverySeconds = 30;
    private const int Fewest = 2;

    /// <summary>In order; empty for a ride without repeats.</summary>
    /// <param name="ride">The ride.</param>
    public static ImmutableArray<StretchEntry> Of(RideFigures ride)
    {
        if (ride is not { Power: { } power, Threshold: { } threshold, Cuts: { } cuts })
            return [];
        using var samples = power.Samples.Lend();
        foreach (var sustained in new[] { ride.AtThresholdShare, ride.AtHighShare }.OfType<SustainedTime>())
        {
            var found = new Parting(power, samples.Span, threshold.Power.Value, cuts.LowerPercent).Of(sustained);
            if (found.Length >= Fewest)
                return found;
        }
        return [];
    }

    private readonly ref struct Parting(CleanPower power, ReadOnlySpan<float> samples, double thresholdW, double lowPercent)
    {
        private readonly ReadOnlySpan<float> _samples = samples;

        public ImmutableArray<StretchEntry> Of(SustainedTime sustained)
        {
            var joined = new List<(int Start, int End)>();
            var recoveries = 0;
            foreach (var (start, end) in sustained.Runs)
            {
                if (joined.Count > 0)
                {
                    var last = joined[^1];
                    if (HasRecovery(last.End, start))
                    {
                        recoveries++;
                    }
                    else if (Mean(last.Start, end) >= thresholdW * sustained.SharePercent / 100)
                    {
                        joined[^1] = (last.Start, end);
                        continue;
                    }
                }
                joined.Add((start, end));
            }
            if (2 * recoveries < joined.Count - 1 || !AreOfAKind(joined))
                return [];
            var entries = ImmutableArray.CreateBuilder<StretchEntry>(joined.Count);
            foreach (var (start, end) in joined)
                entries.Add(new StretchEntry(sustained.SharePercent, start, end, Mean(start, end)));
            return entries.ToImmutable();
        }

        private static bool AreOfAKind(List<(int Start, int End)> stretches)
        {
            var longest = stretches.Count == 0 ? 0 : stretches.Max(s => s.End - s.Start);
            return 3 * stretches.Count(s => 2 * (s.End - s.Start) >= longest) >= stretches.Count;
        }

        private double Mean(int start, int end) => Channel.Mean(_samples[start..end]);

        // A pause is a recovery, and so is power that is missing for as long: nothing says that the riding went on.
        private bool HasRecovery(int from, int to)
        {
            if (power.HasPauseWithin(from, to))
                return true;
            var easy = 0;
            for (var second = from; second < to; second++)
            {
                var mean = Mean(Math.Max(from, second - EasyMeanSeconds + 1), second + 1);
                easy = mean >= thresholdW * lowPercent / 100 ? 0 : easy + 1;
                if (easy >= ShortestRecoverySeconds)
                    return true;
            }
            return false;
        }
    }
}
