using RideAudit.Fit.Messages;
using RideAudit.Fit.Writing;
using static RideAudit.Fit.FitFaultAction;
using static RideAudit.Fit.FitFaultCode;
using static RideAudit.Fit.Tests.Hazards.RideBuilder;
using Base = RideAudit.Fit.Protocol.FitBaseType;

namespace RideAudit.Fit.Tests.Hazards;

/// <summary>Rows B12 to B20: sizes and types of fields.</summary>
internal static class FieldCases
{
    public static IEnumerable<HazardCase> All() => [.. Sizes(), .. Types()];

    private static HazardCase Case(string row, string name, string what, RideBuilder ride, params (FitFaultCode, FitFaultAction)[] faults) =>
        new(row, name, what, ride.Finish()) { Records = ride.Records, PowerSum = ride.PowerSum, Faults = faults };

    private static IEnumerable<HazardCase> Sizes()
    {
        yield return Case("B12", "size-not-a-multiple", "a uint32 field of one byte before power", With(new FitFieldLayout(200, Base.UInt32, 1)), (FieldSizeMismatch, Skip));
        yield return Case("B13", "size-zero", "a field of no bytes before power", With(new FitFieldLayout(200, Base.UInt8, 0)));
        yield return Case("B14", "unknown-base-type", "a field of base type 0x1F before power", With(new FitFieldLayout(200, (Base)0x1F, 3)), (UnknownBaseType, Warn));
        var ride = new RideBuilder().Open().DefineRecords().Ride(0, 20);
        ride.Messages.WriteRaw([0x43, 0, 0, 20, 0, 4, 200, 1, 0x1F, 201, 1, 0x1E, 202, 1, 0x7D, 203, 1, 0x1D]);
        yield return Case("B14", "many-unknown-base-types", "a definition of unknown base types only", ride.Ride(20, 40).Close(), (CorruptDefinition, Salvage), (Resynchronised, Salvage));
        yield return Case("B20", "repeated-field-widened", "field 200 declared with one and with four bytes, both written with four", Repeated(), (RepeatedFieldWidened, Warn));
        yield return Case("B20", "repeated-field", "power declared twice: the first valid value counts", RepeatedPower());
    }

    private static RideBuilder With(FitFieldLayout before)
    {
        var ride = new RideBuilder().Open();
        ride.Messages.Define(RecordType, 20, [Time, before, Power, HeartRate]);
        for (var i = 0; i < 50; i++)
            ride.Record(200, Start + (uint)i, new byte[before.Size], 200, 140);
        return ride.Close(seconds: 50);
    }

    private static RideBuilder Repeated()
    {
        var ride = new RideBuilder().Open();
        ride.Messages.WriteRaw([0x41, 0, 0, 20, 0, 4, 253, 4, 0x86, 200, 1, 0x02, 200, 4, 0x02, 7, 2, 0x84]);
        for (var i = 0; i < 50; i++)
        {
            ride.Messages.WriteRaw([1, .. BitConverter.GetBytes(Start + (uint)i), 1, 2, 3, 4, 5, 6, 7, 8, 200, 0]);
            ride.Count(200);
        }

        return ride.Close(seconds: 50);
    }

    private static RideBuilder RepeatedPower()
    {
        var ride = new RideBuilder().Open();
        ride.Messages.Define(RecordType, 20, [Time, Power, Power]);
        for (var i = 0; i < 10; i++)
            ride.Record(i % 2 == 0 ? 210 : 220, Start + (uint)i, i % 2 == 0 ? 210 : FitValue.Missing, 220);
        return ride.Close(seconds: 10);
    }

    private static IEnumerable<HazardCase> Types()
    {
        yield return Case("B15", "64-bit-types", "fields of the three 64-bit types before power", With64Bits());
        yield return Case("B16", "narrower-type", "power as uint8", PowerAs(Base.UInt8, 200));
        yield return Case("B16", "enum-for-number", "heart rate as enum", HeartRateAsEnum()) with { Also = f => Assert.Equal(140, f.Parts[0].Records.HeartRate[0]) };
        yield return Case("B17", "wider-type", "power as uint32", PowerAs(Base.UInt32, 200));
        yield return Case("B17", "float-type", "power as float32", PowerAs(Base.Float32, 200.0));
        var outside = PowerAs(Base.UInt32, 70_000, 0);
        yield return Case("B17", "wider-type-out-of-range", "power as uint32 and 70,000 W", outside) with { Also = f => Assert.Equal(new ChannelFacts(0, 0, 10, 0), f.Parts[0].Records.PowerFacts) };
        yield return Case("B18", "array-for-scalar", "power as an array of three: the first counts", PowerArray());
    }

    private static RideBuilder With64Bits()
    {
        var ride = new RideBuilder().Open();
        ride.Messages.Define(RecordType, 20, [Time, new(200, Base.SInt64), new(201, Base.UInt64), new(202, Base.UInt64Z), Power]);
        for (var i = 0; i < 10; i++)
            ride.Record(200, Start + (uint)i, -5, 7, 9, 200);
        return ride.Close(seconds: 10);
    }

    private static RideBuilder PowerAs(Base type, FitValue value, int counted = 200)
    {
        var ride = new RideBuilder().Open();
        ride.Messages.Define(RecordType, 20, [Time, new(7, type)]);
        for (var i = 0; i < 10; i++)
            ride.Record(counted, Start + (uint)i, value);
        return ride.Close(seconds: 10);
    }

    private static RideBuilder HeartRateAsEnum()
    {
        var ride = new RideBuilder().Open();
        ride.Messages.Define(RecordType, 20, [Time, Power, new(3, Base.Enum)]);
        for (var i = 0; i < 10; i++)
            ride.Record(200, Start + (uint)i, 200, 140);
        return ride.Close(seconds: 10);
    }

    private static RideBuilder PowerArray()
    {
        var ride = new RideBuilder().Open();
        ride.Messages.Define(RecordType, 20, [Time, new(7, Base.UInt16, 6), HeartRate]);
        for (var i = 0; i < 10; i++)
            ride.Record(200, Start + (uint)i, new byte[] { 200, 0, 44, 1, 144, 1 }, 140);
        return ride.Close(seconds: 10);
    }
}
