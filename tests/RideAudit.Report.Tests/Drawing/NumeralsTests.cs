using RideAudit.Report.Drawing;

namespace RideAudit.Report.Tests.Drawing;

public sealed class NumeralsTests
{
    [Theory]
    [InlineData(0, "0")]
    [InlineData(-0.004, "0")]
    [InlineData(12, "12")]
    [InlineData(0.5, "0.5")]
    [InlineData(-0.05, "-0.05")]
    [InlineData(595.28, "595.28")]
    [InlineData(1234567.894, "1234567.89")]
    [InlineData(0.995, "1")]
    public void Numbers_have_at_most_two_decimals_and_no_exponent(double value, string text) => Assert.Equal(text, Numerals.Plain(value));
}
