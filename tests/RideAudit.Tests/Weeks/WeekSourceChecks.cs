using System.Collections.Immutable;
using MathNet.Numerics.Statistics;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Tests.Weeks;

/// <summary>Loads, monotony and strain against values worked out outside the program.</summary>
public class WeekSourceChecks
{
    /// <summary>Monotony and strain, population standard deviation. Derived by closed form; the ratio itself: Foster 1998, Med Sci Sports Exerc 30:1164 (found).</summary>
    [Theory]
    [InlineData(new double[] { 100, 200, 300, 400, 500, 600, 700 }, 2.0, 5600)]
    [InlineData(new double[] { 0, 0, 0, 700, 700, 700, 700 }, 1.1547, 3233.16)]
    [InlineData(new double[] { 300, 0, 600, 0, 450, 900, 150 }, 1.1148, 2675.45)]
    [InlineData(new double[] { 500, 500, 500, 500, 500, 500, 0 }, 2.4495, 7348.47)]
    public void Monotony_and_strain_use_the_population_standard_deviation(double[] stresses, double monotony, double strain)
    {
        var week = WeekOf(stresses);

        Assert.Equal(monotony, week.Monotony!.Value, 1e-4);
        Assert.Equal(strain, week.Strain!.Value, 5e-3);
        Assert.Equal(stresses.Average() / stresses.PopulationStandardDeviation(), week.Monotony.Value, 1e-12);
    }

    /// <summary>Derived: no division by zero.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(60)]
    public void Monotony_of_seven_equal_days_is_undefined(double stress)
    {
        var week = WeekOf([.. Enumerable.Repeat(stress, 7)]);

        Assert.Null(week.Monotony);
        Assert.Null(week.Strain);
    }

    /// <summary>Time-constant weights: Banister, Calvert, Savage and Bach 1975, Aust J Sports Med 7:57 (from memory); the values derived.</summary>
    [Fact]
    public void An_impulse_of_100_decays_with_the_time_constants()
    {
        var load = default(LoadState);
        double[] acute = [13.3122, 11.5401, 10.0038, 8.6721];
        double[] chronic = [2.3528, 2.2975, 2.2434, 2.1906];
        for (var day = 0; day < 4; day++)
        {
            load = load.After(day == 0 ? 100 : 0);
            Assert.Equal(acute[day], load.Acute, 5e-5);
            Assert.Equal(chronic[day], load.Chronic, 5e-5);
        }
    }

    /// <summary>Derived: after N days of 100 from 0, an exponential mean of N days stands at 63.2121.</summary>
    [Fact]
    public void After_as_many_days_as_its_time_constant_a_load_stands_at_63_percent()
    {
        var load = default(LoadState);
        for (var day = 1; day <= 42; day++)
        {
            load = load.After(100);
            if (day == 7)
                Assert.Equal(63.2121, load.Acute, 5e-5);
        }
        Assert.Equal(63.2121, load.Chronic, 5e-5);
    }

    /// <summary>Derived: 42 days at 100 and 7 at 150, each load begun at 100.</summary>
    [Fact]
    public void A_week_of_half_as_much_again_lifts_the_acute_load_first()
    {
        var load = new LoadState(100, 100);
        for (var day = 0; day < 49; day++)
            load = load.After(day < 42 ? 100 : 150);

        Assert.Equal(131.6060, load.Acute, 5e-5);
        Assert.Equal(107.6759, load.Chronic, 5e-5);
    }

    /// <summary>Derived, exact: a constant load begun at its own height stays there.</summary>
    [Fact]
    public void A_constant_load_stays_constant()
    {
        var load = new LoadState(80, 80);
        for (var day = 0; day < 100; day++)
            load = load.After(80);

        Assert.Equal(new LoadState(80, 80), load);
        Assert.Equal(1, load.Ratio);
    }

    [Fact]
    public void The_ratio_of_no_load_is_undefined() => Assert.Null(default(LoadState).Ratio);

    private static WeekFacts WeekOf(double[] stresses)
    {
        var monday = new LocalDate(2026, 5, 4);
        var days = stresses.Select((stress, i) => DayFacts.Build(monday.PlusDays(i), stress > 0 ? [RideOf(monday.PlusDays(i), stress)] : [])).ToImmutableArray();
        return WeekFacts.Build(days, default, monday);
    }

    private static RideFigures RideOf(LocalDate date, double stress) => new()
    {
        File = $"{date:uuuu-MM-dd}.fit",
        StartsAt = date.At(new LocalTime(18, 0)).WithOffset(Offset.Zero),
        DurationSeconds = 3600,
        ElapsedSeconds = 3600,
        Kind = RideKind.Endurance,
        Stress = stress,
    };
}
