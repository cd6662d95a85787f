using RideAudit.Fit.Tests.Hazards;
using RideAudit.Fit.Writing;

namespace RideAudit.Fit.Tests.Reading;

/// <summary>A ride of 4,700 records with every kind of damage to its container; what must be left follows from where the bytes were cut.</summary>
public class BaseRideTests
{
    private const int Seconds = 4_700;
    private static readonly RideBuilder Ride = RideBuilder.Whole(Seconds);
    private static readonly byte[] Whole = Ride.Finish();

    public static TheoryData<string, byte[]> Harmless => new()
    {
        { "untouched", Whole },
        { "CRC missing", Whole[..^2] },
        { "CRC half", Whole[..^1] },
        { "CRC zero", Bytes.With(Whole, f => f[^1] = f[^2] = 0) },
        { "CRC wrong", Bytes.With(Whole, f => f[^1] ^= 1) },
        { "header CRC wrong", Bytes.With(Whole, f => f[12] ^= 1) },
        { "12-byte header", Ride.Finish(new FitWriterOptions { HeaderSize = 12 }) },
        { "13-byte header", Ride.Finish(new FitWriterOptions { HeaderSize = 13 }) },
        { "20-byte header", Ride.Finish(new FitWriterOptions { HeaderSize = 20 }) },
        { "data size 0", Bytes.WithDataSize(Whole, 0) },
        { "data size 0, CRC missing", Bytes.WithDataSize(Whole, 0)[..^2] },
        { "data size 0xFFFFFFFF", Bytes.WithDataSize(Whole, uint.MaxValue) },
        { "data size a third too small", Bytes.WithDataSize(Whole, (uint)Whole.Length * 2 / 3) },
        { "data size 11 too large", Bytes.WithDataSize(Whole, (uint)Ride.Messages.Length + 11) },
        { "junk tail", Bytes.Join(Whole, Bytes.Noise(4096, 1)) },
        { "zero tail", Bytes.Join(Whole, new byte[4096]) },
        { "protocol 3", Ride.Finish(new FitWriterOptions { ProtocolVersion = 0x30 }) },
        { "gzip", GzipOf(Whole) },
        { "byte-order mark", Bytes.Join([0xEF, 0xBB, 0xBF], Whole) },
    };

    [Theory]
    [MemberData(nameof(Harmless))]
    public void Damage_to_the_container_loses_no_record(string damage, byte[] file)
    {
        var part = Assert.Single(FitDecoder.Decode(file).Parts);

        Assert.True(part.Records.Count == Seconds, damage);
        Assert.Equal(Ride.PowerSum, part.Records.Power.ToArray().Sum(p => (double)p));
        Assert.Single(part.Sessions);
    }

    /// <summary>Every cut in a stretch of two records and in the last message, and cuts all over the file.</summary>
    [Fact]
    public void A_cut_anywhere_keeps_every_complete_record_and_no_other()
    {
        IEnumerable<int> cuts = [.. Enumerable.Range(40_000, 36), .. Enumerable.Range(1, 60).Select(i => i * 1300), .. Enumerable.Range(Whole.Length - 30, 28)];
        foreach (var cut in cuts)
        {
            foreach (var file in new[] { Whole[..cut], Bytes.WithDataSize(Whole[..cut], 0), Bytes.WithDataSize(Whole[..cut], (uint)cut - 14) })
            {
                var part = Assert.Single(FitDecoder.Decode(file).Parts);
                (var count, var sum) = Ride.Within(cut - 14);
                Assert.Equal(count, part.Records.Count);
                Assert.Equal(sum, part.Records.Power.ToArray().Sum(p => (double)p));
                Assert.False(part.Integrity.EndedAtDataEnd && part.Integrity.IsIntact);
            }
        }
    }

    /// <summary>The slipped stream may take a few records for other messages before it breaks; none of it may be taken for another day.</summary>
    [Fact]
    public void Bytes_lost_in_mid_ride_cost_a_few_records_and_never_the_rest()
    {
        const int mostRecordsLost = 12;
        for (var lost = 1; lost <= 60; lost++)
        {
            var part = FitDecoder.Decode([.. Whole[..30_000], .. Whole[(30_000 + lost)..]]).Parts[0];

            Assert.InRange(part.Records.Count, Seconds - mostRecordsLost, Seconds);
            Assert.True(part.Sessions.Count == 1, lost + ": " + string.Join('\n', part.Faults));
            foreach (var time in part.Records.Timestamps)
                Assert.InRange(time, RideBuilder.Start - 86_400, RideBuilder.Start + Seconds + 86_400);
        }
    }

    [Fact]
    public void Reading_up_to_the_first_break_keeps_what_stands_before_it()
    {
        var ride = new RideBuilder().Open().DefineRecords().Ride(0, 20);
        ride.Messages.WriteRaw([0x0C, 1, 2, 3]);
        var file = ride.Ride(20, 40).Close().Finish();

        var read = FitDecoder.Decode(file, new FitDecodeOptions { Tolerance = DamageTolerance.UpToFirstBreak });

        Assert.Equal(20, read.Parts[0].Records.Count);
        Assert.Equal(FitFaultCode.UndefinedLocalType, read.Faults[0].Code);
    }

    [Fact]
    public void Strict_reading_stops_at_the_first_fault_of_any_kind()
    {
        foreach (var hazard in HazardTable.All.Where(h => h.Faults.Length > 0))
        {
            var read = FitDecoder.Decode(hazard.Bytes, new FitDecodeOptions { Tolerance = DamageTolerance.Strict });
            Assert.True(read.FaultCount >= 1, hazard.FileName);
            Assert.InRange(read.Parts.Sum(p => p.Records.Count), 0, Math.Max(hazard.Records, 3));
        }

        foreach (var hazard in HazardTable.All.Where(h => h.IsGood))
            Assert.Equal(hazard.Records, FitDecoder.Decode(hazard.Bytes, new FitDecodeOptions { Tolerance = DamageTolerance.Strict }).Parts.Sum(p => p.Records.Count));
    }

    [Fact]
    public void The_caps_hold_and_say_so()
    {
        var read = FitDecoder.Decode(Whole, new FitDecodeOptions { MaxRecords = 100 });
        Assert.Equal(100, read.Parts[0].Records.Count);
        Assert.Single(read.Faults, f => f.Code == FitFaultCode.LimitReached);

        var chain = Bytes.Join([.. Enumerable.Repeat(TinyRideTests.File, 5)]);
        Assert.Equal(3, FitDecoder.Decode(chain, new FitDecodeOptions { MaxParts = 3 }).Parts.Count);
        Assert.Equal(FitRejectionReason.NotFit, FitDecoder.Decode(GzipOf(Whole), new FitDecodeOptions { MaxInflatedBytes = 1000 }).Rejection!.Reason);
    }

    private static byte[] GzipOf(byte[] bytes)
    {
        using MemoryStream output = new();
        using (System.IO.Compression.GZipStream gzip = new(output, System.IO.Compression.CompressionLevel.Fastest))
            gzip.Write(bytes);
        return output.ToArray();
    }
}
