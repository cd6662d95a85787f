using System.Text;
using RideAudit.Fit.Protocol;
using RideAudit.Fit.Tests.Hazards;

namespace RideAudit.Fit.Tests.Protocol;

public class FitCrcTests
{
    /// <summary>
    /// "a" to "abcdefghij": tormoder/fit, dyncrc16_test.go (found). "123456789": check value of CRC-16/ARC in the catalogue
    /// of parametrised CRC algorithms (from memory; derived again). The empty text and the bytes 00 to FF: derived.
    /// </summary>
    [Theory]
    [InlineData("", 0x0000)]
    [InlineData("\0", 0x0000)]
    [InlineData("a", 0xE8C1)]
    [InlineData("ab", 0x79A8)]
    [InlineData("abc", 0x9738)]
    [InlineData("abcdefghij", 0xC8B1)]
    [InlineData("123456789", 0xBB3D)]
    public void Known_texts_have_their_known_crc(string text, int crc) =>
        Assert.Equal(crc, FitCrc.Compute(Encoding.ASCII.GetBytes(text)));

    [Fact]
    public void All_byte_values_in_order_have_the_derived_crc() =>
        Assert.Equal(0xBAD3, FitCrc.Compute([.. Enumerable.Range(0, 256).Select(i => (byte)i)]));

    /// <summary>The first: tormoder/fit, header_test.go (found; stored 3B 34). The others: the format owner's example files (found).</summary>
    [Theory]
    [InlineData("0E105704636F01002E464954", 0x343B)]
    [InlineData("0E206806A20000002E464954", 0xD0BE)]
    [InlineData("0E105E06860000002E464954", 0xDBA2)]
    public void Known_headers_have_their_known_crc(string header, int crc) =>
        Assert.Equal(crc, FitCrc.Compute(Convert.FromHexString(header)));

    /// <summary>Source: tormoder/fit, header_test.go (found): the last byte 0x35 instead of 0x34 must fail.</summary>
    [Theory]
    [InlineData("0E105704636F01002E4649543B34", true)]
    [InlineData("0E105704636F01002E4649543B35", false)]
    [InlineData("0E105704636F01002E4649540000", true)]
    public void A_header_agrees_with_its_crc_or_has_none(string header, bool agrees)
    {
        Assert.True(FitHeader.TryParse(Convert.FromHexString(header), out var parsed));
        Assert.Equal(agrees, parsed.CrcAgrees);
        Assert.Equal(94_051u, parsed.DataSize);
        Assert.Equal(1111, parsed.ProfileVersion);
    }

    [Fact]
    public void Every_form_equals_the_bitwise_definition_at_every_length()
    {
        var bytes = Bytes.Noise(1200, 11);
        for (var length = 0; length < bytes.Length; length++)
        {
            ReadOnlySpan<byte> part = bytes.AsSpan(0, length);
            var expected = Bitwise(0x1234, part);
            Assert.Equal(expected, FitCrc.AppendByTables(0x1234, part));
            Assert.Equal(expected, FitCrc.Append(0x1234, part));
            if (CarrylessCrc.IsSupported && length >= 64)
                Assert.Equal(expected, CarrylessCrc.Append(0x1234, part));
        }
    }

    [Fact]
    public void The_carry_less_form_equals_the_tables_on_random_lengths_and_starts()
    {
        Random random = new(5);
        var bytes = Bytes.Noise(70_000, 12);
        for (var i = 0; CarrylessCrc.IsSupported && i < 500; i++)
        {
            int start = random.Next(1000), length = random.Next(CarrylessCrc.WorthwhileLength, 60_000);
            var crc = (ushort)random.Next(65_536);
            Assert.Equal(FitCrc.AppendByTables(crc, bytes.AsSpan(start, length)), CarrylessCrc.Append(crc, bytes.AsSpan(start, length)));
        }
    }

    [Fact]
    public void The_crc_over_a_file_with_its_own_crc_is_zero() =>
        Assert.Equal(0, FitCrc.Compute(TinyRideTests.File));

    private static ushort Bitwise(ushort crc, ReadOnlySpan<byte> bytes)
    {
        foreach (var b in bytes)
        {
            crc ^= b;
            for (var bit = 0; bit < 8; bit++)
                crc = (ushort)((crc & 1) != 0 ? (crc >> 1) ^ 0xA001 : crc >> 1);
        }

        return crc;
    }
}
