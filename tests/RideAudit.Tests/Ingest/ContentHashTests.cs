using RideAudit.Ingest;

namespace RideAudit.Tests.Ingest;

public sealed class ContentHashTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(16)]
    [InlineData(37)]
    [InlineData(160)]
    public void A_change_of_any_one_bit_changes_it(int length)
    {
        var bytes = new byte[length];
        new Random(length).NextBytes(bytes);
        HashSet<UInt128> seen = [ContentHash.Of(bytes)];
        for (var bit = 0; bit < 8 * length; bit++)
        {
            bytes[bit / 8] ^= (byte)(1 << (bit % 8));
            Assert.True(seen.Add(ContentHash.Of(bytes)));
            bytes[bit / 8] ^= (byte)(1 << (bit % 8));
        }
        Assert.Contains(ContentHash.Of(bytes), seen);
    }

    [Fact]
    public void Zeros_at_the_end_count() =>
        Assert.Equal(70, Enumerable.Range(0, 70).Select(length => ContentHash.Of(new byte[length])).Distinct().Count());
}
