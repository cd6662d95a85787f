using RideAudit.Figures;
using RideAudit.Tests.Demo;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

public sealed class PowerCurveTests
{
    public static TheoryData<string, float[]> Rides
    {
        get
        {
            var random = new DemoRandom(7);
            float Noise(double spread) => (float)Math.Round(spread * random.Normal());
            float[] Make(int seconds, Func<int, double> power) => [.. Enumerable.Range(0, seconds).Select(i => (float)power(i))];
            return new()
            {
                { "even", Flat(1500, 200) },
                { "all coasting", Flat(700, 0) },
                { "one second", Flat(1, 321) },
                { "shorter than a block", Make(63, i => i * i % 97) },
                { "exactly a block", Make(64, i => i * i % 97) },
                { "one more than a block", Make(65, i => i * i % 97) },
                { "noise", Make(1900, _ => Math.Max(0, 200 + Noise(120))) },
                { "nearly even", Make(2200, _ => 200 + Noise(2)) },
                { "rising", Make(1300, i => 100 + i / 10) },
                { "falling", Make(1300, i => 300 - i / 10) },
                { "intervals", Make(2400, i => i % 300 < 120 ? 320 + Noise(10) : 110 + Noise(30)) },
                { "stops at lights", Make(2600, i => i % 90 < 20 ? 0 : 230 + Noise(40)) },
                { "a sprint at the end", [.. Flat(1200, 150), .. Flat(10, 1100)] },
                { "dropouts", Make(2000, i => i % 500 < 40 ? double.NaN : Math.Max(0, 220 + Noise(60))) },
                { "one long dropout", Make(1500, i => i is > 400 and < 900 ? double.NaN : Math.Max(0, 220 + Noise(60))) },
                { "fractions of a watt", Make(1700, i => 200 + 50 * Math.Sin(i / 37.0) + 0.3 * random.Normal()) },
            };
        }
    }

    [Theory]
    [MemberData(nameof(Rides))]
    public void The_whole_curve_is_what_trying_every_window_finds(string which, float[] power)
    {
        var curve = PowerCurve.Of(power);
        var naive = Naive(power);
        Assert.True(naive.Count - 1 == curve.LongestSeconds, which);
        for (var duration = 1; duration <= curve.LongestSeconds; duration++)
        {
            var best = curve.At(duration);
            Assert.Equal(naive[duration] / duration, best.MeanW, 9);
            var window = power.AsSpan(best.StartSecond, duration).ToArray();
            Assert.Equal(best.MeanW, window.Average(p => (double)p), 6);
        }
    }

    /// <summary>Of all leaves of a ride; what was counted when the bounds were last changed, and a little more. A bound that spares less is slower and no less right: no other test sees it.</summary>
    [Theory]
    [InlineData("even", 0.05)]
    [InlineData("all coasting", 0.2)]
    [InlineData("nearly even", 13.2)]
    [InlineData("noise", 18.6)]
    [InlineData("rising", 7.3)]
    [InlineData("falling", 4.9)]
    [InlineData("intervals", 24.2)]
    [InlineData("stops at lights", 43.6)]
    [InlineData("a sprint at the end", 2.9)]
    [InlineData("dropouts", 4.4)]
    [InlineData("one long dropout", 11.8)]
    [InlineData("fractions of a watt", 30.7)]
    public void Most_windows_are_never_tried(string which, double percent)
    {
        var power = (float[])Rides.Single(r => which.Equals(r[0]))[1];
        var search = new CurveSearch(power, PowerCurve.Of(power).LongestSeconds);
        search.Run();
        var leaves = (power.Length + 15) / 16;
        Assert.InRange(search.LeavesTried, 1, percent / 100 * leaves * (leaves + 1) / 2);
    }

    [Fact]
    public void Without_power_there_is_no_curve()
    {
        Assert.Equal(0, PowerCurve.Of([]).LongestSeconds);
        Assert.Equal(0, PowerCurve.Of([None, None]).LongestSeconds);
        Assert.Throws<ArgumentOutOfRangeException>(() => PowerCurve.Of([]).At(1));
        Assert.Throws<ArgumentOutOfRangeException>(() => PowerCurve.Of([200]).At(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => PowerCurve.Of([200]).At(2));
    }

    [Fact]
    public void The_named_durations_are_points_of_the_curve()
    {
        var power = (float[])Rides.Single(r => "intervals".Equals(r[0]))[1];
        var curve = PowerCurve.Of(power);
        foreach (var best in BestPowers.Of(power, BestPowers.Durations))
            Assert.Equal(best.MeanW, curve.At(best.DurationSeconds).MeanW, 9);
    }

    /// <summary>The largest sum of each duration by trying every start.</summary>
    private static List<double> Naive(float[] power)
    {
        var largest = new List<double> { 0 };
        for (var duration = 1; duration <= power.Length; duration++)
        {
            var best = double.NegativeInfinity;
            double sum = 0;
            var valid = 0;
            for (var i = 0; i < power.Length; i++)
            {
                (sum, valid) = float.IsNaN(power[i]) ? (0, 0) : (sum + power[i], valid + 1);
                if (valid > duration)
                    (sum, valid) = (sum - power[i - duration], duration);
                if (valid == duration)
                    best = Math.Max(best, sum);
            }
            if (double.IsNegativeInfinity(best))
                break;
            largest.Add(best);
        }
        return largest;
    }
}
