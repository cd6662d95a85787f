using RideAudit.Report.Charts;

namespace RideAudit.Report.Tests.Charts;

public sealed class ScaleTests
{
    [Theory]
    [InlineData(7.1, 4, 0, 8, 2)]
    [InlineData(411, 4, 0, 600, 200)]
    [InlineData(44.7, 3, 0, 60, 20)]
    [InlineData(0.4, 4, 0, 1, 1)]
    [InlineData(9.6, 4, 0, 10, 2.5)]
    [InlineData(1000, 4, 0, 1000, 250)]
    public void Limits_and_ticks_are_round(double largest, int ticks, double low, double high, double step) =>
        Assert.Equal(new Scale(low, high, step), Scale.For([largest], ticks));

    [Fact]
    public void Values_under_zero_are_on_the_scale_and_zero_has_a_tick()
    {
        var scale = Scale.For([-1.8, 7.1], 3);

        Assert.Equal([-5, 0, 5, 10], scale.Ticks);
    }

    [Fact]
    public void Every_value_lies_between_the_limits_and_the_ticks_reach_from_one_to_the_other()
    {
        var random = new Random(7);
        for (var round = 0; round < 500; round++)
        {
            double[] values = [.. Enumerable.Range(0, 1 + random.Next(6)).Select(_ => (random.NextDouble() - 0.3) * Math.Pow(10, random.Next(-1, 5)))];
            var ticks = random.Next(2, 6);
            var scale = Scale.For(values, ticks);

            Assert.All(values, value => Assert.InRange(value, scale.Low, scale.High));
            Assert.InRange(scale.Ticks.Count(), 2, ticks + 3);
            Assert.Equal(scale.Low, scale.Ticks.First(), 9);
            Assert.Equal(scale.High, scale.Ticks.Last(), 9);
        }
    }

    [Fact]
    public void A_step_of_a_half_shows_a_decimal() => Assert.Equal((1, 0), (new Scale(0, 10, 2.5).Decimals, new Scale(0, 10, 5).Decimals));
}
