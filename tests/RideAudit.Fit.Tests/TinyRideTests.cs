using RideAudit.Fit.Messages;
using RideAudit.Fit.Writing;
using Base = RideAudit.Fit.Protocol.FitBaseType;

namespace RideAudit.Fit.Tests;

/// <summary>
/// A ride of 109 bytes (derived): accepted with CRC checking on and decoded to the same five records by polyvertex/fitdecode and
/// dtcooper/python-fitparse. It has both CRCs, a compressed time that rolls over, invalid values, a true 0 W, a gap and a big-endian definition.
/// </summary>
public class TinyRideTests
{
    private const uint Start = 1_000_000_030;

    public static byte[] File { get; } = Convert.FromHexString(
        "0e205c085d0000002e464954fc9e4000000000030001000102840404860004ff001eca9a3b410000140003fd0486030102070284011eca9a3b8cfa00"
        + "420000140002030102070284df8d0401c0ffffffc58e0000430001001403fd0486030102070284033b9aca268f012c0a3b");

    [Fact]
    public void It_is_read_as_two_other_decoders_read_it()
    {
        var part = Assert.Single(FitDecoder.Decode(File).Parts);

        Assert.Equal(FitCrcState.Agrees, part.Integrity.Crc);
        Assert.True(part.Integrity.EndedAtDataEnd);
        Assert.Equal(new FitFileId(FitFileType.Activity, 255, null, Start), part.FileId);
        Assert.Equal([Start, Start + 1, Start + 2, Start + 7, Start + 8], part.Records.Timestamps.ToArray());
        Assert.Equal([140, 141, float.NaN, 142, 143], part.Records.HeartRate.ToArray());
        Assert.Equal([250, 260, float.NaN, 0, 300], part.Records.Power.ToArray());
        Assert.Equal(1_631_065_630, FitTime.ToUnixSeconds(Start));
    }

    [Fact]
    public void The_writer_makes_the_same_bytes()
    {
        FitFieldLayout time = new(253, Base.UInt32), heartRate = new(3, Base.UInt8), power = new(7, Base.UInt16);
        FitMessageWriter writer = new();
        writer.Define(0, 0, [new(0, Base.Enum), new(1, Base.UInt16), new(4, Base.UInt32)]);
        writer.Write(0, 4, 255, Start);
        writer.Define(1, 20, [time, heartRate, power]);
        writer.Write(1, Start, 140, 250);
        writer.Define(2, 20, [heartRate, power]);
        writer.WriteCompressed(2, Start + 1, 141, 260);
        writer.WriteCompressed(2, Start + 2, FitValue.Missing, FitValue.Missing);
        writer.WriteCompressed(2, Start + 7, 142, 0);
        writer.Define(3, 20, [time, heartRate, power], FitByteOrder.BigEndian);
        writer.Write(3, Start + 8, 143, 300);

        Assert.Equal(File, writer.Finish(new FitWriterOptions { ProfileVersion = 2140 }));
    }
}
