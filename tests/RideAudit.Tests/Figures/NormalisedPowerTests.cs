using RideAudit.Figures;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>
/// Definition: Allen and Coggan, Training and Racing with a Power Meter, chapter 7 (from memory). The values are derived by hand or closed form:
/// 31 full windows of 10k W, k = 0 to 30, have fourth powers that sum to 5,273,999 × 10⁴, so B and C are (10⁴ × 170,129)^¼ = 203.0928 W.
/// </summary>
public sealed class NormalisedPowerTests
{
    public static TheoryData<string, float[], double> Cases => new()
    {
        { "A: 200 W for an hour (published: MathWorks Cody problem 3064, found)", Flat(3600, 200), 200 },
        { "B: 0 W, then 300 W", Blocks((30, 0), (30, 300)), 203.0928 },
        { "C: 300 W, then 0 W: separates the three start-up conventions", Blocks((30, 300), (30, 0)), 203.0928 },
        { "D: 100 W, then 200 W", Blocks((300, 100), (300, 200)), 170.1382 },
        { "E: a period as long as the window", Repeated(20, (15, 100), (15, 300)), 200 },
        { "F: 0 and 400 W", Repeated(10, (30, 0), (30, 400)), 267.7949 },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Hand_computed_cases_agree(string which, float[] power, double expected)
    {
        Assert.NotEmpty(which);
        Assert.Equal(expected, NormalisedPower.Of(Trailing(power))!.Value.Value, 1e-3);
    }

    [Fact]
    public void Case_A_is_exact() => Assert.Equal(200, NormalisedPower.Of(Trailing(Flat(3600, 200)))!.Value.Value);

    [Fact]
    public void Case_G_half_the_windows_at_100_W_and_half_at_300_W_give_the_fourth_root_of_41e8()
    {
        // Two stretches between pauses, each of full windows at one power only: 31 windows a side.
        var power = Blocks((60, 100), (60, 300));
        Assert.Equal(253.0440, NormalisedPower.Of(Trailing(power, 60))!.Value.Value, 1e-3);
    }

    [Fact]
    public void Fewer_than_30_samples_have_no_full_window_and_no_value() => Assert.Null(NormalisedPower.Of(Trailing(Flat(29, 300))));

    [Fact]
    public void Thirty_samples_have_one() => Assert.Equal(300, NormalisedPower.Of(Trailing(Flat(30, 300)))!.Value.Value, 9);

    [Fact]
    public void Windows_restart_after_a_pause()
    {
        // Joined over the pause, the windows of case C would hold both powers; restarted, each side has one window of its own.
        var restarted = NormalisedPower.Of(Trailing(Blocks((30, 300), (30, 0)), 30))!.Value.Value;
        Assert.Equal(Math.Pow((Math.Pow(300, 4) + 0) / 2, 0.25), restarted, 9);
    }

    [Fact]
    public void Windows_restart_after_missing_power()
    {
        var power = Blocks((30, 300), (5, double.NaN), (30, 0));
        Assert.Equal(Math.Pow(Math.Pow(300, 4) / 2, 0.25), NormalisedPower.Of(Trailing(power))!.Value.Value, 9);
    }

    [Fact]
    public void A_stretch_too_short_for_a_window_adds_none()
    {
        var power = Blocks((60, 200), (29, 900));
        Assert.Equal(200, NormalisedPower.Of(Trailing(power, 60))!.Value.Value, 9);
    }

    [Fact]
    public void Coasting_counts_as_0_W()
    {
        var coasting = NormalisedPower.Of(Trailing(Repeated(10, (30, 0), (30, 400))))!.Value.Value;
        Assert.InRange(coasting, 200, 300);
    }

    private static float[] Repeated(int times, params (int, double)[] blocks) =>
        [.. Enumerable.Range(0, times).SelectMany(_ => Blocks(blocks))];
}
