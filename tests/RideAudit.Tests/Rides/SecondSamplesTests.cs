using RideAudit.Rides;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Rides;

/// <summary>Rows of one second are one sample, the last valid value counting.</summary>
public sealed class SecondSamplesTests
{
    [Fact]
    public void Of_a_row_a_second_the_plausible_values_are_counted_and_a_0_is_no_complaint()
    {
        float[] heart = [140, 140, 0, 140, 140, 250, 140, 140, 140, None, 140];
        Assert.Equal((8, 1), Merge([.. Enumerable.Range(0, 11)], heart, out var merged));
        Assert.Equal([140, 140, None, 140, 140, None, 140, 140, 140, None, 140], merged);
    }

    [Fact]
    public void Of_rows_in_any_order_the_seconds_with_a_value_are_counted()
    {
        Assert.Equal((2, 1), Merge([1, 0, 1, 2], [140, 130, None, 250], out var merged));
        Assert.Equal([130, 140, None], merged);
    }

    [Fact]
    public void The_last_distance_of_a_second_that_is_not_below_0_counts()
    {
        double[] metres = [0, 5, double.NaN, 20, -1];
        Assert.Equal([0, 5, 20], LastOfEach([0, 1, 1, 2, 2], metres, 3));
    }

    [Fact]
    public void Of_a_row_a_second_a_distance_of_0_counts_and_one_below_does_not() =>
        Assert.Equal([0, double.NaN, 20], LastOfEach([0, 1, 2], [0, -5, 20], 3));

    [Theory]
    [InlineData(new long[] { 2, 1, 0 }, new float[] { 300, 200, 100 }, new float[] { 100, 200, 300 })]
    [InlineData(new long[] { 7, 7 }, new float[] { 100, 300 }, new float[] { 300 })]
    [InlineData(new long[] { 7, 8 }, new float[] { 100, 300 }, new float[] { 100, 300 })]
    public void Rows_backwards_or_all_in_one_second_make_the_ride_they_were(long[] seconds, float[] watts, float[] ridden) =>
        Assert.Equal(ridden, GridBuilder.Build(new Track { Seconds = seconds, PowerW = watts }).Grid.PowerW!);

    private static (int Values, int Refused) Merge(long[] seconds, float[] heart, out float[] merged)
    {
        var samples = SecondSamples.From(new Track { Seconds = seconds });
        merged = new float[samples.Count];
        var values = samples.Merge(heart, 30, 230, merged, out var refused);
        return (values, refused);
    }

    private static double[] LastOfEach(long[] seconds, double[] metres, int count)
    {
        var samples = SecondSamples.From(new Track { Seconds = seconds });
        var last = new double[count];
        for (var second = 0; second < count; second++)
            last[second] = samples.LastOf(metres, second);
        return last;
    }
}
