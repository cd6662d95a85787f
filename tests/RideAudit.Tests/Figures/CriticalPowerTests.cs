using RideAudit.Figures;

namespace RideAudit.Tests.Figures;

/// <summary>
/// Work = W′ + CP × time: Monod and Scherrer 1965, Ergonomics 8:329–338; Moritani et al. 1981, Ergonomics 24:339–350 (both found as references).
/// The values are derived.
/// </summary>
public sealed class CriticalPowerTests
{
    [Fact]
    public void Three_points_on_a_line_give_it_back_exactly()
    {
        var found = Fit((180, 65_000), (720, 200_000), (1200, 320_000))!.Value;
        Assert.Equal(250, found.Power.Value, 9);
        Assert.Equal(20_000, found.WorkAboveJ, 6);
    }

    [Fact]
    public void Noisy_points_are_fitted_by_least_squares_of_work_on_time()
    {
        // By hand: 280 W and 16,000 J with residuals +1, −2, +1 kJ. Power over 1 ÷ time would give 270.7692 W and 17,692.3 J.
        var found = Fit((100, 45_000), (200, 70_000), (300, 101_000))!.Value;
        Assert.Equal(280, found.Power.Value, 9);
        Assert.Equal(16_000, found.WorkAboveJ, 6);
    }

    [Fact]
    public void Two_points_are_a_line_too()
    {
        // Inverts the group means 283 W and 18.72 kJ of 3- and 12-minute trials (Int J Sports Physiol Perform 2017, 12:825–830, found).
        var found = CriticalPower.Fit([(180, 387), (720, 309)])!.Value;
        Assert.Equal(283, found.Power.Value, 9);
        Assert.Equal(18_720, found.WorkAboveJ, 6);
    }

    [Fact]
    public void One_duration_is_not_enough()
    {
        Assert.Null(CriticalPower.Fit([]));
        Assert.Null(CriticalPower.Fit([(300, 300)]));
        Assert.Null(CriticalPower.Fit([(300, 300), (300, 310)]));
    }

    [Fact]
    public void A_line_without_work_above_it_is_refused() => Assert.Null(CriticalPower.Fit([(180, 250), (720, 250), (1200, 250)]));

    [Fact]
    public void A_line_that_starts_below_0_is_refused() => Assert.Null(CriticalPower.Fit([(180, 200), (720, 260), (1200, 280)]));

    [Fact]
    public void A_falling_line_is_refused() => Assert.Null(CriticalPower.Fit([(180, 500), (720, 100), (1200, 50)]));

    [Fact]
    public void A_level_line_whose_work_does_not_grow_with_time_is_refused() => Assert.Null(Fit((100, 30_000), (200, 30_000), (300, 30_000)));

    private static CriticalPower? Fit(params (double Seconds, double Work)[] points) =>
        CriticalPower.Fit([.. points.Select(p => (p.Seconds, p.Work / p.Seconds))]);
}
