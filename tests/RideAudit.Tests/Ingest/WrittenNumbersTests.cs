using System.Globalization;
using RideAudit.Ingest.Text;

namespace RideAudit.Tests.Ingest;

public sealed class WrittenNumbersTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Plain_numbers_are_the_nearest_as_the_parser_of_the_platform_finds_them(bool decimalComma)
    {
        var random = new Random(20261129);
        for (var i = 0; i < 300_000; i++)
        {
            var text = random.NextInt64(1L << random.Next(1, 63)).ToString(CultureInfo.InvariantCulture);
            text = text.PadLeft(random.Next(1, 19), '0').Insert(random.Next(text.Length + 1), random.Next(4) == 0 ? "" : ".");
            Assert.Equal(double.Parse(text, CultureInfo.InvariantCulture), WrittenNumbers.Parse(decimalComma ? text.Replace('.', ',') : text, decimalComma));
        }
    }

    [Theory]
    [InlineData("", false, null)]
    [InlineData(".", false, null)]
    [InlineData(",", true, null)]
    [InlineData("1.2.3", false, null)]
    [InlineData("1,5", false, null)]
    [InlineData("1.234,5", true, null)]
    [InlineData("1 2", false, null)]
    [InlineData("٣", false, null)]
    [InlineData("1e400", false, null)]
    [InlineData(".5", false, 0.5)]
    [InlineData("5.", false, 5.0)]
    [InlineData("1.5", true, 1.5)]
    [InlineData(" -1.5e3 ", false, -1500.0)]
    public void A_number_is_read_or_it_is_none(string text, bool decimalComma, double? number) =>
        Assert.Equal(number, WrittenNumbers.Parse(text, decimalComma));
}
