using RideAudit.Fit.Messages;
using RideAudit.Fit.Writing;
using static RideAudit.Fit.Tests.Hazards.RideBuilder;
using Base = RideAudit.Fit.Protocol.FitBaseType;

namespace RideAudit.Fit.Tests.Hazards;

/// <summary>Rows D: values, components, accumulators.</summary>
internal static class ValueCases
{
    private static readonly FitFieldLayout EnhancedSpeed = new(73, Base.UInt32);
    private static readonly FitFieldLayout EnhancedAltitude = new(78, Base.UInt32);
    private static readonly FitFieldLayout Compressed = new(8, Base.Byte, 3);

    public static IEnumerable<HazardCase> All() => [.. Missing(), .. Enhanced(), .. Components(), .. Balances(), .. Summaries()];

    private static HazardCase Case(string row, string name, string what, FitFieldLayout[] layout, int count, Func<int, (int Power, FitValue[] Values)> record, Action<RecordChannels> check)
    {
        var ride = new RideBuilder().Open();
        ride.Messages.Define(RecordType, 20, layout);
        for (var i = 0; i < count; i++)
        {
            (var power, var values) = record(i);
            ride.Record(power, values);
        }

        return Made(row, name, what, ride.Close(seconds: count)) with { Also = f => check(f.Parts[0].Records) };
    }

    private static HazardCase Made(string row, string name, string what, RideBuilder ride) =>
        new(row, name, what, ride.Finish()) { Records = ride.Records, PowerSum = ride.PowerSum };

    private static IEnumerable<HazardCase> Missing()
    {
        yield return Case("D01", "invalid-values", "every field invalid in every other record", [Time, Power, HeartRate, Cadence, Distance, Speed, Altitude], 10,
            i => i % 2 == 0 ? (0, [Start + (uint)i]) : (250, [Start + (uint)i, 250, 140, 90, 100, 8000, 3891]),
            r =>
            {
                Assert.Equal([float.NaN, 250f], r.Power[..2].ToArray());
                Assert.Equal([float.NaN, 278.2f], r.AltitudeM[..2].ToArray());
                Assert.Equal([double.NaN, 1.0], r.DistanceM[..2].ToArray());
            });
        yield return Case("D02", "power-never-valid", "a power field that is always invalid", [Time, Power, HeartRate], 10,
            i => (0, [Start + (uint)i, FitValue.Missing, 140]), r => Assert.Equal(new ChannelFacts(0, 0, 10, 0), r.PowerFacts));
        yield return Case("D03", "power-all-zero", "0 W in every record: no meter", [Time, Power], 10,
            i => (0, [Start + (uint)i, 0]), r => Assert.True(r.PowerFacts.IsAllZero));
        var three = new RideBuilder().Open();
        three.Messages.Define(RecordType, 20, [Time, Power]);
        foreach ((var i, var power, var counted) in new (int, FitValue, int)[] { (0, 210, 210), (1, 0, 0), (2, FitValue.Missing, 0), (3, 190, 190) })
            three.Record(counted, Start + (uint)i, power);
        three.Messages.Define(RecordType, 20, [Time, HeartRate]);
        three.Record(0, Start + 4, 140);
        yield return Made("D04", "zero-invalid-absent", "a value, a true zero, an invalid value and no field at all", three.Close(seconds: 5)) with
        {
            Also = f => Assert.Equal(new ChannelFacts(3, 1, 1, 1), f.Parts[0].Records.PowerFacts),
        };
        yield return Case("D05", "heart-rate-zero", "0 bpm in every record: no strap", [Time, Power, HeartRate], 10,
            i => (200, [Start + (uint)i, 200, 0]), r => Assert.All(r.HeartRate.ToArray(), h => Assert.True(float.IsNaN(h))));
    }

    private static IEnumerable<HazardCase> Enhanced()
    {
        yield return Case("D06", "enhanced-only", "enhanced speed and altitude only", [Time, Power, EnhancedSpeed, EnhancedAltitude], 10,
            i => (200, [Start + (uint)i, 200, 12_345, 3500]), r => Check(r, 12.345f, 200f));
        yield return Case("D07", "basic-and-enhanced", "altitude 100 m and enhanced altitude 200 m: the enhanced one counts", [Time, Power, EnhancedSpeed, EnhancedAltitude, Altitude, Speed], 10,
            i => (200, [Start + (uint)i, 200, 12_345, 3500, 3000, 5000]), r => Check(r, 12.345f, 200f));
        yield return Case("D07", "enhanced-invalid", "enhanced fields that are invalid beside valid basic ones", [Time, Power, EnhancedSpeed, EnhancedAltitude, Altitude, Speed], 10,
            i => (200, [Start + (uint)i, 200, FitValue.Missing, FitValue.Missing, 3000, 5000]), r => Check(r, 5f, 100f));
        yield return Case("D08", "basic-invalid", "basic speed and altitude invalid: nothing to expand", [Time, Power, Speed, Altitude], 10,
            i => (200, [Start + (uint)i, 200]), r => Check(r, float.NaN, float.NaN));
    }

    private static void Check(RecordChannels records, float speed, float altitude)
    {
        Assert.All(records.SpeedMps.ToArray(), s => Assert.Equal(speed, s));
        Assert.All(records.AltitudeM.ToArray(), a => Assert.Equal(altitude, a));
    }

    private static IEnumerable<HazardCase> Components()
    {
        yield return Case("D09", "compressed-distance", "8 m a record in 12 bits of 1/16 m: rolls over every 256 m", [Time, Power, Compressed], 100,
            i => (200, [Start + (uint)i, 200, Pack(800, i * 128)]),
            r =>
            {
                Assert.Equal(99 * 8.0, r.DistanceM[^1]);
                Assert.All(r.SpeedMps.ToArray(), s => Assert.Equal(8f, s));
            });
        yield return Case("D10", "compressed-distance-invalid", "the same with FF FF FF in two records", [Time, Power, Compressed], 100,
            i => (200, [Start + (uint)i, 200, i is 50 or 51 ? new byte[] { 255, 255, 255 } : Pack(800, i * 128)]),
            r =>
            {
                Assert.Equal(99 * 8.0, r.DistanceM[^1]);
                Assert.Equal(98, r.SpeedMps.ToArray().Count(s => s == 8f));
                Assert.True(double.IsNaN(r.DistanceM[50]));
            });
        yield return Case("D10", "compressed-distance-short", "a compressed field of one byte instead of three: stepped over", [Time, Power, new(8, Base.UInt8, 1)], 10,
            i => (200, [Start + (uint)i, 200, 7]), r => Assert.All(r.SpeedMps.ToArray(), v => Assert.True(float.IsNaN(v))));
        yield return Case("D11", "accumulated-power-compressed", "accumulated power in 16 bits: rolls over", [Time, Power, new(28, Base.UInt16)], 100,
            i => (1500, [Start + (uint)i, 1500, (i + 1) * 1500 % 65_536]), r => Assert.Equal(100 * 1500.0, r.AccumulatedPower[^1]));
        yield return Case("D11", "accumulated-power", "accumulated power in 32 bits", [Time, Power, new(29, Base.UInt32)], 10,
            i => (1500, [Start + (uint)i, 1500, (i + 1) * 100_000]), r => Assert.Equal(1_000_000.0, r.AccumulatedPower[^1]));
    }

    /// <summary>Speed in 1/100 m/s and distance in 1/16 m, twelve bits each.</summary>
    private static byte[] Pack(int speed, int distance)
    {
        var low = distance & 0xFFF;
        return [(byte)speed, (byte)((speed >> 8) | ((low & 0x0F) << 4)), (byte)(low >> 4)];
    }

    private static IEnumerable<HazardCase> Balances()
    {
        yield return Balance("D12", "balance-right", "balance with the flag for the right leg", 0x80 | 48, new PedalBalance(48, true));
        yield return Balance("D13", "balance-no-side", "balance without the flag", 48, new PedalBalance(48, false));
        yield return Balance("D14", "balance-constant", "100 % in every record: a meter on one side", 0x80 | 100, new PedalBalance(100, true));
    }

    private static HazardCase Balance(string row, string name, string what, int raw, PedalBalance expected) =>
        Case(row, name, what, [Time, Power, new(30, Base.UInt8)], 10, i => (200, [Start + (uint)i, 200, raw]),
            r => Assert.All(r.Balance.ToArray(), b => Assert.Equal(expected, PedalBalance.FromByte(b))));

    private static IEnumerable<HazardCase> Summaries()
    {
        var ride = new RideBuilder().Open().DefineRecords();
        ride.Messages.Define(3, 2, [new(2, Base.UInt32)]);
        ride.Messages.Write(3, 86_400);
        yield return Made("D15", "offset-out-of-range", "a device time offset of 86,400 s", ride.Ride(0, 10).Close(seconds: 10)) with
        {
            Faults = [(FitFaultCode.LocalTimeOutOfRange, FitFaultAction.Skip)],
            Also = f => Assert.Null(f.Parts[0].DeviceSettings[0].TimeOffsetSeconds),
        };
        ride = new RideBuilder().Open().DefineRecords().Ride(0, 10);
        ride.Timer(Start + 10, 4);
        ride.Messages.Define(4, 18, [Time, new(2, Base.UInt32), new(5, Base.Enum), new(20, Base.UInt16), new(7, Base.UInt32)]);
        ride.Messages.Write(4, Start + 10, Start, 2, 999, 3_600_000);
        yield return Made("D16", "session-disagrees", "a session whose mean power and time are not the records'", ride.Activity(Start + 10)) with
        {
            Also = f =>
            {
                Assert.Equal(999, f.Parts[0].Sessions[0].AvgPower);
                Assert.Equal(3600, f.Parts[0].Sessions[0].TotalElapsedSeconds);
            },
        };
    }
}
