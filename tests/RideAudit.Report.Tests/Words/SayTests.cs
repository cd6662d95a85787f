using RideAudit.Report.Words;

namespace RideAudit.Report.Tests.Words;

public sealed class SayTests
{
    [Theory]
    [InlineData(3600, "1 h")]
    [InlineData(3540, "59 min")]
    [InlineData(3599, "1 h")]
    [InlineData(0, "0 min")]
    [InlineData(36_300, "10 h 5 min")]
    public void A_length_of_time_reads_as_in_the_rules(double seconds, string text) => Assert.Equal(text, Say.Length(seconds).Replace('\u00A0', ' '));

    [Theory]
    [InlineData(-1.72, 1, "−1.7")]
    [InlineData(-0.04, 1, "0.0")]
    [InlineData(2.5, 0, "3")]
    [InlineData(0.125, 2, "0.13")]
    public void A_number_has_a_true_minus_and_no_minus_nought(double value, int decimals, string text) => Assert.Equal(text, Say.Number(value, decimals));

    [Theory]
    [InlineData(2.1, "+2.1")]
    [InlineData(0.04, "0.0")]
    [InlineData(-3.0, "−3.0")]
    public void A_change_has_its_sign(double value, string text) => Assert.Equal(text, Say.Change(value));

    [Fact]
    public void A_missing_number_is_a_dash_and_never_a_nought() => Assert.Equal("–", Say.Number(null));
}
