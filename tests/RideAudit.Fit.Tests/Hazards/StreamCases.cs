using RideAudit.Fit.Messages;
using RideAudit.Fit.Writing;
using static RideAudit.Fit.FitFaultAction;
using static RideAudit.Fit.FitFaultCode;
using static RideAudit.Fit.Tests.Hazards.RideBuilder;
using Base = RideAudit.Fit.Protocol.FitBaseType;

namespace RideAudit.Fit.Tests.Hazards;

/// <summary>Rows B: definitions, fields and the message stream.</summary>
internal static class StreamCases
{
    public static IEnumerable<HazardCase> All() => [.. Unknowns(), .. Desyncs(), .. Definitions(), .. CompressedTimes(), .. Shapes(), .. Texts()];

    private static HazardCase Case(string row, string name, string what, RideBuilder ride, params (FitFaultCode, FitFaultAction)[] faults) =>
        new(row, name, what, ride.Finish()) { Records = ride.Records, PowerSum = ride.PowerSum, Faults = faults };

    private static IEnumerable<HazardCase> Unknowns()
    {
        var ride = new RideBuilder().Open().DefineRecords().Ride(0, 10);
        ride.Messages.Define(9, 65_280, [new(0, Base.UInt32), new(1, Base.Byte, 7)]);
        for (var i = 0; i < 5; i++)
            ride.Messages.Write(9, i, new byte[7]);
        yield return Case("B01", "unknown-messages", "five messages of number 65280", ride.Ride(10, 20).Close()) with
        {
            Also = f => Assert.Equal(5, f.Parts[0].MessageCounts[65_280]),
        };
        ride = new RideBuilder().Open().DefineRecords(new FitFieldLayout(200, Base.UInt32), new FitFieldLayout(201, Base.Byte, 5));
        yield return Case("B02", "unknown-fields", "records with two unknown fields", ride.Ride(0, 20).Close());
        ride = new RideBuilder().Open().DefineRecords().Ride(0, 10).Timer(Start + 10, 4).Session(seconds: 10, sport: 82).Activity(Start + 10);
        yield return Case("B03", "unknown-sport", "sport 82", ride) with { Also = f => Assert.Equal((byte)82, f.Parts[0].Sessions[0].Sport) };
    }

    private static IEnumerable<HazardCase> Desyncs()
    {
        var ride = new RideBuilder().Open().DefineRecords().Ride(0, 20);
        ride.Messages.WriteRaw([0x0C, 1, 2, 3, 4, 5, 6, 7, 8, 9]);
        yield return Case("B04", "undefined-local-type", "ten bytes of a local type that was never defined, in mid-ride", ride.Ride(20, 40).Close(), (UndefinedLocalType, Salvage), (Resynchronised, Salvage));
        ride = new RideBuilder().Open().DefineRecords().Ride(0, 20);
        ride.Messages.Write(RecordType, Start + 3_000_000_00u, 9000, 5, 5, 5, 5, 5);
        ride.Messages.WriteRaw([0x0C, 1, 2, 3, 4, 5, 6, 7, 8, 9]);
        yield return Case("B05", "garbage-before-break", "a record nine years on just before the stream breaks", ride.Ride(20, 40).Close(), (StreamSlipped, Salvage), (Resynchronised, Salvage));
        ride = new RideBuilder().Open().DefineRecords().Ride(0, 20).Timer(Start + 300_000_000, 4);
        ride.Messages.WriteRaw([0x0C, 1, 2, 3, 4, 5, 6, 7, 8, 9]);
        yield return Case("B05", "garbage-event-before-break", "a timer stop nine years on just before the stream breaks", ride.Ride(20, 40).Close(), (UndefinedLocalType, Salvage), (DoubtfulMessagesDropped, Skip), (Resynchronised, Salvage)) with
        {
            Also = f => Assert.Equal(2, f.Parts[0].Events.Count),
        };
        yield return TwoBytesLost();
        ride = new RideBuilder().Open().DefineRecords().Ride(0, 20);
        ride.Messages.WriteRaw([0x41, 0, 0, 20, 0, 0, 0x0C, 1, 2, 3]);
        yield return Case("B05", "garbage-definition-before-break", "a definition without fields takes the records' local type just before the stream breaks", ride.Ride(20, 40).Close(), (UndefinedLocalType, Salvage), (Resynchronised, Salvage));
        yield return ReservedBits();
    }

    /// <summary>Record 25 loses two bytes behind its power, so record 26 cannot be found; record 27 can.</summary>
    private static HazardCase TwoBytesLost()
    {
        var file = Whole().Finish();
        var cut = 14 + new RideBuilder().Open().DefineRecords().Ride(0, 26).Messages.Length - 4;
        return new HazardCase("B05", "two-bytes-lost", "two bytes lost in mid-ride: the bytes behind still pass for records, with senseless times", [.. file[..cut], .. file[(cut + 2)..]])
        {
            Records = Whole().Records - 1,
            PowerSum = Whole().PowerSum - PowerAt(26),
            Faults = [(StreamSlipped, Salvage), (Resynchronised, Salvage), (FileCrcMismatch, Salvage)],
        };
    }

    private static HazardCase ReservedBits()
    {
        var ride = Whole();
        var file = ride.Finish();
        var firstRecord = 14 + new RideBuilder().Open().DefineRecords().Messages.Length;
        Assert.Equal(RecordType, file[firstRecord]);
        var marked = Bytes.With(file, f => f[firstRecord] |= 0x30);
        return new HazardCase("B25", "reserved-bits", "reserved bits set in a data header", Bytes.WithDataSize(marked, (uint)ride.Messages.Length, true))
        {
            Records = ride.Records,
            PowerSum = ride.PowerSum,
        };
    }

    private static IEnumerable<HazardCase> Definitions()
    {
        var ride = new RideBuilder().Open().DefineRecords().Ride(0, 10);
        ride.Messages.Define(RecordType, 20, [Power, Time]);
        for (var i = 10; i < 20; i++)
            ride.Record(PowerAt(i), PowerAt(i), Start + (uint)i);
        yield return Case("B06", "redefinition", "the record's definition changes in mid-ride", ride.DefineRecords().Ride(20, 30).Close());
        yield return Case("B07", "one-local-type", "local type 0 for everything", OneLocalType());
        yield return Case("B08", "big-endian", "big-endian throughout", Whole(order: FitByteOrder.BigEndian));
        ride = new RideBuilder().Open();
        ride.Messages.WriteRaw([0x41, 0, 2, 20, 0, 2, 253, 4, 0x86, 7, 2, 0x84]);
        for (var i = 0; i < 20; i++)
            ride.Messages.WriteRaw([1, .. BitConverter.GetBytes(Start + (uint)i), .. BitConverter.GetBytes((ushort)PowerAt(i))]);
        yield return Case("B09", "byte-order-2", "a record definition with byte order 2; the summaries behind it are sound", ride.Close(), (CorruptDefinition, Salvage), (Resynchronised, Salvage)) with { Records = 0, PowerSum = 0 };
        ride = new RideBuilder().Open();
        ride.Messages.Define(RecordType, 20, [Time, Power, .. Enumerable.Range(100, 90).Select(n => new FitFieldLayout((byte)n, Base.UInt8))]);
        for (var i = 0; i < 10; i++)
            ride.Record(PowerAt(i), Start + (uint)i, PowerAt(i));
        yield return Case("B21", "92-fields", "more than 85 fields in a definition", ride.Close(seconds: 10));
    }

    private static RideBuilder OneLocalType()
    {
        RideBuilder ride = new();
        ride.Messages.Define(0, 0, [new(0, Base.Enum)]);
        ride.Messages.Write(0, 4);
        for (var i = 0; i < 10; i++)
        {
            ride.Messages.Define(0, 20, [Time, Power]);
            ride.Messages.Write(0, Start + (uint)i, PowerAt(i));
            ride.Count(PowerAt(i));
            ride.Messages.Define(0, 65_281, [new(0, Base.UInt16)]);
            ride.Messages.Write(0, i);
        }

        return ride.Close(seconds: 10);
    }

    private static IEnumerable<HazardCase> CompressedTimes()
    {
        var ride = new RideBuilder().Open().DefineRecords().Ride(0, 1);
        ride.Messages.Define(2, 20, [Power, HeartRate, Altitude]);
        for (var i = 1; i <= 100; i++)
        {
            ride.Messages.WriteCompressed(2, Start + (uint)(5 * i), PowerAt(i), 130, 2500);
            ride.Count(PowerAt(i));
        }

        yield return Case("B10", "compressed-times", "100 records with compressed times 5 s apart, rolling over", ride.Close(seconds: 501)) with
        {
            Also = f =>
            {
                Assert.Equal(Start + 500, f.Parts[0].Records.Timestamps[^1]);
                Assert.DoesNotContain(float.NaN, f.Parts[0].Records.AltitudeM.ToArray());
            },
        };
        ride = new RideBuilder();
        ride.Messages.Define(0, 0, [new(0, Base.Enum)]);
        ride.Messages.Write(0, 4);
        ride.Messages.Define(2, 20, [Power]);
        for (var i = 0; i < 3; i++)
        {
            ride.Messages.WriteCompressed(2, (uint)i, 200);
            ride.Count(200);
        }

        yield return Case("B11", "compressed-before-full", "compressed times before any full one", ride.DefineRecords().Ride(3, 20).Close(), (RecordWithoutTime, Skip)) with
        {
            Also = f => Assert.Equal([RecordChannels.NoTime, RecordChannels.NoTime, RecordChannels.NoTime, Start + 3], f.Parts[0].Records.Timestamps[..4].ToArray()),
        };
    }

    private static IEnumerable<HazardCase> Shapes()
    {
        RideBuilder ride = new();
        ride.Messages.Define(0, 0, [new(0, Base.Enum)]);
        ride.Messages.Write(0, 4);
        ride.Messages.Define(RecordType, 20, [Power]);
        for (var i = 0; i < 5; i++)
            ride.Record(200, 200);
        yield return Case("B26", "no-time-at-all", "five records without time before any time is known", ride.DefineRecords().Ride(5, 20).Close(), (RecordWithoutTime, Skip));
        ride = new RideBuilder().Open().DefineRecords().Ride(0, 10);
        ride.Messages.Define(RecordType, 20, [Power]);
        for (var i = 0; i < 2; i++)
            ride.Record(200, 200);
        yield return Case("B26", "no-time-after-one", "two records without time after others: the last known time", ride.Close()) with
        {
            Also = f => Assert.Equal([Start + 9, Start + 9], f.Parts[0].Records.Timestamps[^2..].ToArray()),
        };
        ride = new RideBuilder().Open();
        ride.Messages.Define(RecordType, 20, [Power, HeartRate, Time]);
        for (var i = 0; i < 10; i++)
            ride.Record(200, 200, 140, Start + (uint)i);
        yield return Case("B26", "time-last", "the time is the record's last field", ride.Close(seconds: 10));
    }

    private static IEnumerable<HazardCase> Texts()
    {
        yield return DeveloperCases.Described("B22", "text-without-end", "units \"watts\" without closing 0", "Power"u8.ToArray(), "watts"u8.ToArray());
        yield return DeveloperCases.Described("B23", "bytes-after-end", "a second text after the 0 in the name", "Power\0Torque"u8.ToArray(), "watts\0\0xx"u8.ToArray());
        yield return DeveloperCases.Described("B24", "invalid-utf-8", "units with bytes that are no UTF-8; the native mapping and the name still say power", "Power\0"u8.ToArray(), [0xC3, 0x28, 0xFF, 0]);
    }
}
