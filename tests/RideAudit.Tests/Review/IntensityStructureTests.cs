using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Review;
using RideAudit.Units;

namespace RideAudit.Tests.Review;

/// <summary>
/// log10(z1 ÷ z2 × z3 × 100), polarized above 2.00: Treff, Winkert, Sareban, Steinacker and Sperlich 2019, Front Physiol 10:707 (found);
/// z1 > z3 > z2 as well: commentary, Front Physiol 2023, 14:1179769 (found). The indices are derived from shares that the named studies published.
/// </summary>
public sealed class IntensityStructureTests
{
    [Theory]
    [InlineData(80, 5, 15, 2.3802, true)]
    [InlineData(85, 5, 10, 2.2304, true)]
    [InlineData(68, 6, 26, 2.4693, true)]
    // Seiler and Kjerland 2006, Scand J Med Sci Sports 16:49: heart rate, session rating, lactate.
    [InlineData(75, 8, 17, 2.2024, true)]
    [InlineData(76, 6, 18, 2.3579, true)]
    [InlineData(71, 7, 22, 2.3486, true)]
    // Festa et al. 2020 (PMC7739641).
    [InlineData(77, 3, 20, 2.7104, true)]
    [InlineData(40, 50, 10, 0.9031, false)]
    [InlineData(83, 16, 1, 0.7150, false)]
    [InlineData(70, 20, 10, 1.5441, false)]
    public void Published_shares_have_the_index_of_the_table(double low, double middle, double high, double index, bool polarized)
    {
        var bands = new BandSeconds(low * 36, middle * 36, high * 36);
        Assert.Equal(index, IntensityStructure.PolarizationIndex(bands)!.Value, 1e-4);
        Assert.Equal(polarized, IntensityStructure.Of(bands) == WeekStructure.Polarized);
    }

    [Theory]
    // Sylta, Tønnessen and Seiler 2014, IJSPP 9:100: the same training counted three ways; shares as published need not sum to 100.
    [InlineData(96.1, 2.9, 1.1, 1.5617)]
    [InlineData(95.5, 3.6, 0.8, 1.3268)]
    [InlineData(86.6, 11.1, 2.4, 1.2724)]
    public void Rounded_shares_agree_to_their_rounding(double low, double middle, double high, double index)
    {
        // The index of seconds divides by the true total, so 100.1 or 99.9 % moves it by log10 of that.
        var total = low + middle + high;
        var found = IntensityStructure.PolarizationIndex(new BandSeconds(low, middle, high))!.Value;
        Assert.Equal(index, found + Math.Log10(total / 100), 1e-4);
        Assert.NotEqual(WeekStructure.Polarized, IntensityStructure.Of(new BandSeconds(low, middle, high)));
    }

    [Fact]
    public void An_index_of_exactly_2_is_not_polarized()
    {
        var bands = new BandSeconds(720, 80, 100);
        Assert.Equal(2, IntensityStructure.PolarizationIndex(bands));
        Assert.Equal(WeekStructure.Mixed, IntensityStructure.Of(bands));
    }

    [Theory]
    [InlineData(100, 0, 0)]
    [InlineData(80, 20, 0)]
    [InlineData(80, 0, 20)]
    [InlineData(20, 20, 60)]
    [InlineData(0, 0, 0)]
    public void Where_a_share_is_0_or_high_exceeds_low_there_is_no_index(double low, double middle, double high) =>
        Assert.Null(IntensityStructure.PolarizationIndex(new BandSeconds(low, middle, high)));

    [Theory]
    [InlineData(100, 0, 0, "all low")]
    [InlineData(80, 15, 5, "pyramidal")]
    [InlineData(80, 20, 0, "pyramidal")]
    [InlineData(80, 0, 20, "polarized")]
    [InlineData(30, 60, 10, "mostly middle")]
    [InlineData(20, 10, 70, "mostly high")]
    public void The_structure_is_one_word(double low, double middle, double high, string word) =>
        Assert.Equal(word, Words.OrNull(IntensityStructure.Of(new BandSeconds(low, middle, high))));

    [Fact]
    public void No_banded_time_has_no_structure() => Assert.Null(IntensityStructure.Of(default));
}
