using System.Text;
using RideAudit.Fit.Messages;
using RideAudit.Fit.Writing;
using static RideAudit.Fit.FitFaultAction;
using static RideAudit.Fit.FitFaultCode;
using Base = RideAudit.Fit.Protocol.FitBaseType;

namespace RideAudit.Fit.Tests.Hazards;

/// <summary>Rows A: header, length, CRC, chaining, and files that are something else.</summary>
internal static class ContainerCases
{
    private static readonly RideBuilder Ride = RideBuilder.Whole();
    private static readonly byte[] File = Ride.Finish();

    public static IEnumerable<HazardCase> All() => [.. Sizes(), .. Crcs(), .. Headers(), .. DataSizes(), .. Tails(), .. Chains(), .. OtherKinds()];

    private static HazardCase Whole(string row, string name, string what, byte[] bytes, params (FitFaultCode, FitFaultAction)[] faults) =>
        new(row, name, what, bytes) { Records = Ride.Records, PowerSum = Ride.PowerSum, Faults = faults };

    private static HazardCase Refused(string row, string name, string what, byte[] bytes, FitRejectionReason reason, string extension = "fit") =>
        new(row, name, what, bytes) { Rejection = reason, Parts = 0, Sessions = 0, Extension = extension };

    private static HazardCase Cut(string row, string name, string what, byte[] bytes, int messageBytes, params (FitFaultCode, FitFaultAction)[] faults) =>
        new(row, name, what, bytes) { Records = Ride.Within(messageBytes).Count, PowerSum = Ride.Within(messageBytes).Sum, Sessions = 0, Faults = faults };

    private static IEnumerable<HazardCase> Sizes()
    {
        yield return Refused("A01", "empty", "no bytes at all", [], FitRejectionReason.NoData);
        yield return Refused("A02", "one-byte", "the first byte of a header", File[..1], FitRejectionReason.NoData);
        yield return Refused("A02", "header-cut", "13 of 14 bytes of a header", File[..13], FitRejectionReason.NoData) with { Faults = [(PartWithoutData, Warn)] };
        yield return Refused("A02", "header-only", "a header and nothing more", File[..14], FitRejectionReason.NoData) with { Faults = [(DataSizeTooLarge, Salvage), (PartWithoutData, Reject)] };
        yield return Cut("A03", "truncated", "cut in mid-record", File[..400], 400 - 14, (Truncated, Salvage), (DataSizeTooLarge, Salvage), (Incomplete, Salvage));
        var patched = Bytes.WithDataSize(File[..400], 400 - 16);
        yield return Cut("A04", "truncated-length-patched", "cut in mid-record and the header's length made to fit", patched, 400 - 16, (Truncated, Salvage), (FileCrcMismatch, Salvage), (Incomplete, Salvage));
        var open = new RideBuilder().Open().DefineRecords().Ride(0, 30);
        yield return new HazardCase("A05", "no-summaries", "valid CRC, but neither lap nor session nor activity", open.Finish())
        {
            Records = open.Records,
            PowerSum = open.PowerSum,
            Sessions = 0,
            Faults = [(Incomplete, Salvage)],
        };
    }

    private static IEnumerable<HazardCase> Crcs()
    {
        yield return Whole("A06", "crc-missing", "the two bytes of the CRC are missing", File[..^2], (FileCrcMissing, Warn));
        yield return Whole("A06", "crc-half", "the last byte is missing", File[..^1], (FileCrcMissing, Warn));
        yield return Whole("A07", "crc-zero", "the closing CRC is 0", Bytes.With(File, f => f[^1] = f[^2] = 0), (FileCrcMismatch, Warn));
        yield return Whole("A08", "crc-wrong", "the closing CRC is wrong", Bytes.With(File, f => f[^1] ^= 0x55), (FileCrcMismatch, Warn));
        var at = PlaceOfSomeHeartRate();
        yield return Whole("A09", "flipped-byte", "one bit of one heart rate is flipped", Bytes.With(File, f => f[at] ^= 0x40), (FileCrcMismatch, Warn));
    }

    private static int PlaceOfSomeHeartRate()
    {
        var start = new RideBuilder().Open().DefineRecords().Ride(0, 20);
        return 14 + start.Messages.Length + 1 + 4 + 2;
    }

    private static IEnumerable<HazardCase> Headers()
    {
        yield return Whole("A10", "header-crc-zero", "header CRC 0: not computed", Ride.Finish(new FitWriterOptions { HasHeaderCrc = false }));
        yield return Whole("A11", "header-crc-wrong", "header CRC wrong, closing CRC right", WithWrongHeaderCrc(), (HeaderCrcMismatch, Warn));
        yield return Whole("A12", "header-12", "12-byte header", Ride.Finish(new FitWriterOptions { HeaderSize = 12 }));
        yield return Whole("A13", "header-13", "13-byte header", Ride.Finish(new FitWriterOptions { HeaderSize = 13 }), (HeaderSizeUnusual, Warn));
        yield return Whole("A13", "header-16", "16-byte header", Ride.Finish(new FitWriterOptions { HeaderSize = 16 }), (HeaderSizeUnusual, Warn));
        yield return Refused("A13", "header-11", "header size 11", Bytes.With(File, f => f[0] = 11), FitRejectionReason.NotFit);
        yield return Whole("A25", "protocol-3", "protocol version 3.0", Ride.Finish(new FitWriterOptions { ProtocolVersion = 0x30 }), (ProtocolVersionUnknown, Warn));
        yield return Whole("A26", "protocol-0", "protocol 0.0, profile 57", Ride.Finish(new FitWriterOptions { ProtocolVersion = 0, ProfileVersion = 57 }));
    }

    private static byte[] WithWrongHeaderCrc() => Bytes.With(File, f =>
    {
        f[12] ^= 0x11;
        var crc = RideAudit.Fit.Protocol.FitCrc.Compute(f.AsSpan(0, f.Length - 2));
        (f[^2], f[^1]) = ((byte)crc, (byte)(crc >> 8));
    });

    private static IEnumerable<HazardCase> DataSizes()
    {
        var size = Ride.Messages.Length;
        yield return Whole("A14", "size-zero", "data size 0", Bytes.WithDataSize(File, 0, true), (DataSizeZero, Salvage));
        yield return Whole("A14", "size-zero-no-crc", "data size 0 and no CRC", Bytes.WithDataSize(File, 0)[..^2], (DataSizeZero, Salvage), (FileCrcMissing, Warn));
        yield return Cut("A14", "size-zero-cut", "data size 0 and cut", Bytes.WithDataSize(File, 0)[..500], 500 - 14, (Truncated, Salvage), (DataSizeZero, Salvage), (Incomplete, Salvage));
        yield return Whole("A15", "size-max", "data size 0xFFFFFFFF", Bytes.WithDataSize(File, uint.MaxValue, true), (DataSizeTooLarge, Salvage));
        yield return Whole("A15", "size-over", "data size 11 too large", Bytes.WithDataSize(File, (uint)size + 11, true), (DataSizeTooLarge, Salvage));
        yield return Whole("A16", "size-under", "data size a third too small", Bytes.WithDataSize(File, (uint)size * 2 / 3, true), (DataSizeTooSmall, Salvage));
    }

    private static IEnumerable<HazardCase> Tails()
    {
        yield return Whole("A17", "junk-tail", "100 bytes of noise behind the CRC", Bytes.Join(File, Bytes.Noise(100, 3)), (TrailingBytes, Warn));
        yield return Whole("A17", "zero-tail", "512 zeros behind the CRC", Bytes.Join(File, new byte[512]), (TrailingBytes, Warn));
        var later = RideBuilder.Whole(30, RideBuilder.Start + 5000);
        yield return Two("A17", "junk-then-part", "noise, then a whole activity", Bytes.Join(File, Bytes.Noise(50, 4), later.Finish()), later, (PartFoundInTail, Warn));
        var messages = RideBuilder.Whole().Messages;
        messages.WriteRaw([0x4F, 0, 84, 1, 2, 75, .. Bytes.Noise(225, 5)]);
        messages.WriteRaw(Bytes.Noise(800, 6));
        yield return Whole("A18", "junk-inside", "a closed ride, then noise inside the data size that looks like a definition", messages.Finish(), (CorruptDefinition, Salvage));
    }

    private static HazardCase Two(string row, string name, string what, byte[] bytes, RideBuilder second, params (FitFaultCode, FitFaultAction)[] faults) =>
        new(row, name, what, bytes) { Parts = 2, Records = Ride.Records + second.Records, PowerSum = Ride.PowerSum + second.PowerSum, Sessions = 2, Faults = faults };

    private static IEnumerable<HazardCase> Chains()
    {
        var without = WithoutHeartRate();
        yield return new HazardCase("A19", "heart-rate-part", "an activity, then a part with its heart rate only", Bytes.Join(without.Finish(), HeartRateCases.Part(withFileId: true)))
        {
            Parts = 2,
            Records = without.Records,
            PowerSum = without.PowerSum,
            Also = CheckHeartRateJoined,
        };
        yield return new HazardCase("A20", "part-without-file-id", "the same, the second part without file_id", Bytes.Join(without.Finish(), HeartRateCases.Part(withFileId: false)))
        {
            Parts = 2,
            Records = without.Records,
            PowerSum = without.PowerSum,
            Also = CheckHeartRateJoined,
        };
        FitMessageWriter orphan = new();
        orphan.WriteRaw(new RideBuilder().DefineRecords().Ride(0, 5).Messages.Finish()[^(2 + (5 * 17))..^2]);
        yield return Whole("A19", "part-without-definitions", "a second part that relies on the first part's definitions", Bytes.Join(File, orphan.Finish()), (UndefinedLocalType, Salvage), (PartWithoutData, Reject));
        yield return Whole("A21", "second-part-cut", "a whole activity, then a part cut in its first definition", Bytes.Join(File, File[..20]), (Truncated, Salvage), (DataSizeTooLarge, Salvage), (PartWithoutData, Reject));
        yield return Whole("A21", "second-header-bad", "a whole activity, then a part with a damaged header", Bytes.Join(File, Bytes.With(File[..300], f => f[9] = (byte)'X')), (TrailingBytes, Warn));
        var later = RideBuilder.Whole(30, RideBuilder.Start + 5000);
        yield return Two("A22", "two-activities", "two activities in one file", Bytes.Join(File, later.Finish()), later);
    }

    private static RideBuilder WithoutHeartRate()
    {
        var ride = new RideBuilder().Open();
        ride.Messages.Define(RideBuilder.RecordType, 20, [RideBuilder.Time, RideBuilder.Power]);
        for (var i = 0; i < 20; i++)
            ride.Record(RideBuilder.PowerAt(i), RideBuilder.Start + (uint)i, RideBuilder.PowerAt(i));
        return ride.Close(RideBuilder.Start, 20);
    }

    private static void CheckHeartRateJoined(FitFile file)
    {
        Assert.Equal(0, file.Parts[1].Continues);
        Assert.Equal(0, file.Parts[1].HeartRate.Count);
        HeartRateCases.CheckPart(file.Parts[0].HeartRate);
        Assert.True(file.Parts[0].HeartRatesMerged > 0);
    }

    private static IEnumerable<HazardCase> OtherKinds()
    {
        yield return Whole("A23", "gzip", "gzip-compressed, named so", Bytes.Gzip(File)) with { Extension = "fit.gz" };
        yield return Whole("A23", "gzip-named-fit", "gzip-compressed, named .fit", Bytes.Gzip(File));
        yield return Refused("A24", "zip", "a zip archive", Bytes.Zip(), FitRejectionReason.NotFit);
        yield return Refused("A24", "gpx", "a GPX track", Encoding.UTF8.GetBytes("<?xml version=\"1.0\"?><gpx version=\"1.1\"></gpx>"), FitRejectionReason.NotFit);
        yield return Refused("A24", "tcx", "a TCX file", Encoding.UTF8.GetBytes("<?xml version=\"1.0\"?><TrainingCenterDatabase/>"), FitRejectionReason.NotFit);
        yield return Refused("A24", "web-page", "a web page", Encoding.UTF8.GetBytes("<!DOCTYPE html><html><body>not found</body></html>"), FitRejectionReason.NotFit);
        yield return Refused("A24", "json", "JSON text", Encoding.UTF8.GetBytes("{\"error\":\"not found\"}"), FitRejectionReason.NotFit);
        yield return Whole("A24", "byte-order-mark", "a byte-order mark before the header", Bytes.Join([0xEF, 0xBB, 0xBF], File), (ByteOrderMark, Warn));
        var settings = new RideBuilder().FileId(type: 2);
        settings.Messages.Define(3, 3, [new(1, Base.Enum), new(4, Base.UInt16)]);
        settings.Messages.Write(3, 1, 700);
        yield return new HazardCase("A27", "settings", "a settings file, no activity", settings.Finish())
        {
            Sessions = 0,
            Also = f =>
            {
                Assert.False(f.Parts[0].IsActivity);
                Assert.Equal("a settings file", FitFileTypes.Describe(f.Parts[0].FileId!.Type));
                Assert.Equal(70, f.Parts[0].UserProfile!.WeightKg);
            },
        };
        var noId = new RideBuilder().DefineRecords().Ride(0, 10).Close(seconds: 10);
        yield return new HazardCase("A27", "activity-without-file-id", "records and summaries, but no file_id", noId.Finish())
        {
            Records = noId.Records,
            PowerSum = noId.PowerSum,
            Also = f => Assert.True(f.Parts[0].IsActivity),
        };
    }
}
