using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Tests.Protocol;

public class RecordHeaderTests
{
    /// <summary>Source: the worked example of compressed times, decoded by polyvertex/fitdecode (found).</summary>
    [Fact]
    public void Compressed_times_roll_over_as_another_decoder_says()
    {
        uint time = 0x3B;
        List<uint> times = [];
        foreach (var offset in (byte[])[27, 29, 2, 5, 1, 1, 31, 0])
        {
            time = RecordHeader.ResolveTime(time, (byte)(0x80 | offset));
            times.Add(time);
        }

        Assert.Equal([0x3Bu, 0x3D, 0x42, 0x45, 0x61, 0x61, 0x7F, 0x80], times);
    }

    [Theory]
    [InlineData(0x05, false, false, false, 5)]
    [InlineData(0x45, false, true, false, 5)]
    [InlineData(0x6F, false, true, true, 15)]
    [InlineData(0x80 | (3 << 5) | 7, true, false, true, 3)]
    [InlineData(0x80 | (2 << 5) | 7, true, false, false, 2)]
    public void A_header_byte_splits_into_its_bits(byte value, bool compressed, bool definition, bool developer, int localType)
    {
        RecordHeader header = new(value);

        Assert.Equal(compressed, header.IsCompressed);
        Assert.Equal(definition, header.IsDefinition);
        Assert.Equal(localType, header.LocalType);
        if (!compressed)
            Assert.Equal(developer, header.HasDeveloperFields);
    }
}
