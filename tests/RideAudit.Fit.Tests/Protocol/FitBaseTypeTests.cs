using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Tests.Protocol;

public class FitBaseTypeTests
{
    /// <summary>Source: the protocol's base type table (found, the same in five libraries).</summary>
    [Theory]
    [InlineData(0x00, 1, "FF")]
    [InlineData(0x01, 1, "7F")]
    [InlineData(0x02, 1, "FF")]
    [InlineData(0x83, 2, "FF7F")]
    [InlineData(0x84, 2, "FFFF")]
    [InlineData(0x85, 4, "FFFFFF7F")]
    [InlineData(0x86, 4, "FFFFFFFF")]
    [InlineData(0x88, 4, "FFFFFFFF")]
    [InlineData(0x89, 8, "FFFFFFFFFFFFFFFF")]
    [InlineData(0x0A, 1, "00")]
    [InlineData(0x8B, 2, "0000")]
    [InlineData(0x8C, 4, "00000000")]
    [InlineData(0x0D, 1, "FF")]
    [InlineData(0x8E, 8, "FFFFFFFFFFFFFF7F")]
    [InlineData(0x8F, 8, "FFFFFFFFFFFFFFFF")]
    [InlineData(0x90, 8, "0000000000000000")]
    public void A_type_has_its_size_and_its_invalid_pattern_is_no_value(byte code, int size, string invalid)
    {
        var littleEndian = Convert.FromHexString(invalid);
        byte[] bigEndian = [.. littleEndian.Reverse()];

        Assert.True(FitBaseTypes.TryParse(code, out var type));
        Assert.Equal(code, (byte)type);
        Assert.Equal(size, FitBaseTypes.SizeOf(type));
        Assert.False(FieldReader.TryReadNumber(littleEndian, type, false, out _));
        Assert.False(FieldReader.TryReadNumber(bigEndian, type, true, out _));
    }

    [Theory]
    [InlineData(0x83, "38FF", -200)]
    [InlineData(0x84, "C800", 200)]
    [InlineData(0x85, "FEFFFFFF", -2)]
    [InlineData(0x88, "00004843", 200)]
    [InlineData(0x89, "0000000000006940", 200)]
    [InlineData(0x01, "FF", -1)]
    [InlineData(0x8E, "FBFFFFFFFFFFFFFF", -5)]
    public void A_number_is_read_by_its_type_in_either_byte_order(byte code, string bytes, double expected)
    {
        var littleEndian = Convert.FromHexString(bytes);
        FitBaseTypes.TryParse(code, out var type);

        Assert.True(FieldReader.TryReadNumber(littleEndian, type, false, out var little));
        Assert.True(FieldReader.TryReadNumber([.. littleEndian.Reverse()], type, true, out var big));
        Assert.Equal(expected, little);
        Assert.Equal(expected, big);
    }

    [Theory]
    [InlineData("0000C07F")]
    [InlineData("0000807F")]
    public void A_float_that_is_no_finite_number_is_no_value(string bytes) =>
        Assert.False(FieldReader.TryReadNumber(Convert.FromHexString(bytes), FitBaseType.Float32, false, out _));

    [Theory]
    [InlineData(0x11)]
    [InlineData(0x1F)]
    [InlineData(0x46)]
    public void Codes_outside_the_table_are_unknown(byte code) => Assert.False(FitBaseTypes.TryParse(code, out _));
}
