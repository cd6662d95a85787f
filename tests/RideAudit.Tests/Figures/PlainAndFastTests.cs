using System.Collections.Immutable;
using RideAudit.Figures;
using RideAudit.Rides;
using RideAudit.Units;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>What is quick and what is plain give the same, on seeded rides with gaps, pauses and many equal windows.</summary>
public sealed class PlainAndFastTests
{
    private static readonly Watts Threshold = new(240);

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 12)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Bests_on_running_totals_are_those_of_every_window_tried(int seed)
    {
        var power = Power(seed);
        int[] durations = [1, 2, 5, 16, 17, 60, 180, 1200];
        Assert.Equal(durations.Select(d => Plain(power, d)).OfType<BestPower>(), BestPowers.Of(power, durations));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Limits_worked_out_once_divide_the_seconds_as_limits_worked_out_each_time(int seed)
    {
        var power = Power(seed);
        ImmutableArray<GridSegment> segments = [new(0, 700, 0), new(700, power.Length - 700, 900)];
        foreach (var window in new[] { 5, 30, 120 })
        {
            var trailing = TrailingPower.Of(power, segments, window);
            foreach (var percent in new[] { 76.0, 84, 105 })
            {
                var atLeast = trailing.At(percent, Threshold.Value);
                for (var i = 0; i < trailing.Length; i++)
                    Assert.Equal(trailing.IsAtLeast(i, percent, Threshold.Value), atLeast[i]);
            }
        }
    }

    [Fact]
    public void A_last_stretch_without_any_power_has_no_trailing_mean()
    {
        using var trailing = TrailingPower.Of(Blocks((60, 200), (60, double.NaN)), [new(0, 60, 0), new(60, 60, 100)], 30);
        Assert.Equal((30, 200.0), (trailing.CountAt(59), trailing.MeanAt(59)));
        Assert.All(Enumerable.Range(60, 60), second => Assert.Equal(double.NaN, trailing.MeanAt(second)));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Trailing_sums_by_subtraction_are_the_sums_of_their_windows(int seed)
    {
        var power = Power(seed);
        ImmutableArray<GridSegment> segments = [new(0, 700, 0), new(700, power.Length - 700, 900)];
        foreach (var window in new[] { 5, 30, 120 })
        {
            using var trailing = TrailingPower.Of(power, segments, window);
            foreach (var segment in segments)
                for (var i = segment.Start; i < segment.End; i++)
                {
                    var from = i + 1;
                    while (from > segment.Start && i + 1 - from < window && !float.IsNaN(power[from - 1]))
                        from--;
                    Assert.Equal((i + 1 - from, power[from..(i + 1)].Sum(p => (double)p)), (trailing.CountAt(i), trailing.CountAt(i) == 0 ? 0 : trailing.SumAt(i)));
                }
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_limit_that_no_second_may_reach_is_reached_by_none(int seed)
    {
        var power = Power(seed);
        using var trailing = TrailingPower.Of(power, [new(0, power.Length, 0)]);
        var highest = Enumerable.Range(0, power.Length).Max(i => trailing.CountAt(i) == 0 ? 0 : trailing.MeanAt(i));
        foreach (var percent in new[] { 50.0, 99.999, 100, 100.001, 150 })
        {
            var reached = Enumerable.Range(0, power.Length).Any(i => trailing.IsAtLeast(i, percent, highest));
            Assert.Equal(reached, trailing.MayReach(percent, highest));
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Bests_without_their_places_are_the_bests_with_them(int seed)
    {
        var power = Power(seed);
        using var totals = new RunningTotals(power);
        foreach (var duration in new[] { 5, 60, 300, 1200 })
            Assert.Equal(BestPowers.Of(power, [duration]).Select(b => (double?)b.MeanW).FirstOrDefault(), BestPowers.MeanOf(totals, duration));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Bands_of_heart_rate_in_one_pass_are_the_differences_of_three_counts(int seed)
    {
        var heart = Array.ConvertAll(Power(seed), w => w / 2);
        int At(double percent) => IntensityBands.SecondsAtLeast(heart, 160, percent);
        var bands = IntensityBands.OfHeartRate(heart, 160, new BandCuts(80, 95));
        Assert.Equal(new BandSeconds(At(0) - At(80), At(80) - At(95), At(95)), bands);
        Assert.True(bands is { Low: > 0, Middle: > 0, High: > 0 });
    }

    private static BestPower? Plain(float[] power, int duration)
    {
        BestPower? best = null;
        for (var start = 0; start + duration <= power.Length; start++)
        {
            var mean = power.Skip(start).Take(duration).Sum(p => (double)p) / duration;
            if (mean > (best?.MeanW ?? double.NegativeInfinity))
                best = new BestPower(duration, mean, start);
        }
        return best;
    }

    /// <summary>Whole watts in few steps, so that many windows are equal; a lost second here and there, and one long loss.</summary>
    private static float[] Power(int seed)
    {
        var random = new Random(seed);
        var power = Flat(1500, 200);
        for (var i = 0; i < power.Length; i++)
            power[i] = random.Next(300) == 0 ? float.NaN : 100 + 40 * random.Next(7);
        power.AsSpan(400 + 10 * seed, 45).Fill(float.NaN);
        return power;
    }
}
