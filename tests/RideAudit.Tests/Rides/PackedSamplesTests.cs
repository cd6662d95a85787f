using RideAudit.Rides;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Rides;

public sealed class PackedSamplesTests
{
    public static TheoryData<float[]> Channels =>
    [
        [],
        [float.NaN, float.NaN],
        [0, 1, 254, float.NaN],
        [0, 255, float.NaN, 12],
        [256, 65_534, float.NaN, 0],
        [65_535, 3],
        [70_000, float.NaN],
        [0.5f, 3, float.NaN],
        [-1, 3],
        [-1, -3],
        [0.5f, 2.5f],
        [1, 2, 3, 4, 5, 6, 7, 8, 9, 0.5f],
        [1, 2, 3, 4, 5, 6, 7, 8, 9, -1],
        [1, 2, 3, 4, 5, 6, 7, 8, 300, float.NaN],
        [1e20f, 2, 3],
    ];

    [Theory]
    [MemberData(nameof(Channels))]
    public void What_is_packed_is_given_back_exactly(float[] samples)
    {
        PackedSamples packed = samples;
        Assert.Equal(samples, packed);
        Assert.Equal(samples.Length, packed.Count);
        Assert.Equal(samples.Count(s => !float.IsNaN(s)), packed.Values);
        Assert.Equal(samples.Where(s => !float.IsNaN(s)).DefaultIfEmpty(float.NegativeInfinity).Max(), packed.Highest);
        Assert.Equal(samples.Where(s => !float.IsNaN(s)).Select(s => (double)s).DefaultIfEmpty(double.NaN).Average(), packed.Mean(), 9);
        using var lent = packed.Lend();
        Assert.Equal(samples, lent.Span.ToArray());
    }

    [Fact]
    public void A_stretch_is_given_back_alone()
    {
        var part = new float[3];
        PackedSamples.Of([1, 2, 300, float.NaN, 5]).CopyTo(1, part);
        Assert.Equal([2, 300, float.NaN], part);
    }

    [Fact]
    public void Power_takes_two_bytes_a_second_and_heart_rate_one()
    {
        var (power, heart) = (Flat(10_000, 280), Flat(10_000, 140));
        Assert.InRange(Held(() => PackedSamples.Of(power)), 20_000, 20_200);
        Assert.InRange(Held(() => PackedSamples.Of(heart)), 10_000, 10_200);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void A_ride_of_any_length_that_ends_coasting_takes_no_more(int coasting)
    {
        var power = Blocks((10_000, 280), (coasting, 0));
        Assert.InRange(Held(() => PackedSamples.Of(power)), 20_000, 20_200);
    }

    /// <summary>The middle one of five: what else the runtime does meanwhile may be counted with one.</summary>
    private static long Held(Func<PackedSamples> pack) => Enumerable.Range(0, 5).Select(_ => HeldOnce(pack)).Order().ElementAt(2);

    private static long HeldOnce(Func<PackedSamples> pack)
    {
        pack();
        var before = GC.GetAllocatedBytesForCurrentThread();
        var packed = pack();
        var bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        GC.KeepAlive(packed);
        return bytes;
    }
}
