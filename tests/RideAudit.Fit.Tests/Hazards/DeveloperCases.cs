using RideAudit.Fit.Writing;
using static RideAudit.Fit.FitFaultAction;
using static RideAudit.Fit.FitFaultCode;
using static RideAudit.Fit.Tests.Hazards.RideBuilder;
using Base = RideAudit.Fit.Protocol.FitBaseType;

namespace RideAudit.Fit.Tests.Hazards;

/// <summary>Rows C: developer fields. Each ride has 50 records of 222 W in a developer field unless said otherwise.</summary>
internal static class DeveloperCases
{
    private const int Records = 50;
    private const int Watts = 222;
    private const double WattsSum = Records * Watts;
    private static readonly FitDeveloperFieldLayout Field = new(0, 0, Base.UInt16, 2);
    private static readonly byte[] Name = "Power\0"u8.ToArray();
    private static readonly byte[] Units = "watts\0"u8.ToArray();

    public static IEnumerable<HazardCase> All() => [.. Lookups(), .. Descriptions(), .. Meanings()];

    /// <summary>A ride with a described developer field of 222 W.</summary>
    public static HazardCase Described(string row, string name, string what, byte[] fieldName, byte[] units) =>
        Case(row, name, what, r => Describe(Identify(r), fieldName, units));

    private static HazardCase Case(string row, string name, string what, Action<RideBuilder> describe, double sum = WattsSum, Action<RideBuilder>? afterFirstRecord = null, params (FitFaultCode, FitFaultAction)[] faults)
    {
        var ride = new RideBuilder().Open();
        describe(ride);
        DefineRecords(ride);
        for (var i = 0; i < Records; i++)
        {
            ride.Record(0, Start + (uint)i, 140, Watts);
            if (i == 0)
                afterFirstRecord?.Invoke(ride);
        }

        return Made(row, name, what, ride.Close(seconds: Records), sum, faults);
    }

    private static HazardCase Made(string row, string name, string what, RideBuilder ride, double developerSum, params (FitFaultCode, FitFaultAction)[] faults) =>
        new(row, name, what, ride.Finish()) { Records = ride.Records, PowerSum = ride.PowerSum, DeveloperPowerSum = developerSum, Faults = faults };

    private static void DefineRecords(RideBuilder ride) => ride.Messages.Define(RecordType, 20, [Time, HeartRate], developerFields: [Field]);

    private static RideBuilder Identify(RideBuilder ride, byte application = 1)
    {
        ride.Messages.Define(9, 207, [new(1, Base.Byte, 16), new(3, Base.UInt8)]);
        ride.Messages.Write(9, Enumerable.Repeat(application, 16).ToArray(), 0);
        return ride;
    }

    private static void Describe(RideBuilder ride, byte[]? name = null, byte[]? units = null, int type = 0x84, int nativeMessage = 20, int nativeField = 7)
    {
        (name, units) = (name ?? Name, units ?? Units);
        ride.Messages.Define(10, 206, [new(0, Base.UInt8), new(1, Base.UInt8), new(2, Base.UInt8), new(3, Base.String, (byte)name.Length), new(8, Base.String, (byte)units.Length), new(14, Base.UInt16), new(15, Base.UInt8)]);
        ride.Messages.Write(10, 0, 0, type, name, units, nativeMessage, nativeField);
    }

    private static IEnumerable<HazardCase> Lookups()
    {
        yield return Case("C01", "developer-field", "power in a described developer field", r => Describe(Identify(r)));
        yield return Case("C02", "undescribed", "a developer field that is never described", _ => { }, 0, null, (DeveloperFieldUndescribed, Skip));
        yield return Case("C03", "no-developer-id", "a description, but no developer_data_id", r => Describe(r));
        yield return Case("C04", "no-application-id", "a developer_data_id without application id", r =>
        {
            r.Messages.Define(9, 207, [new(3, Base.UInt8)]);
            r.Messages.Write(9, 0);
            Describe(r);
        });
        yield return Case("C05", "description-late", "the description comes after the first record that uses it", r => Identify(r), WattsSum, r => Describe(r));
        yield return Case("C06", "developer-id-again", "the same developer_data_id again in mid-ride", r => Describe(Identify(r)), WattsSum, r => Identify(r));
        yield return Case("C06", "other-developer", "another application takes the index: the description before it is void", r => Describe(Identify(r)), Watts, r => Identify(r, 2), (DeveloperFieldUndescribed, Skip));
    }

    private static IEnumerable<HazardCase> Descriptions()
    {
        yield return Case("C07", "no-native-field", "a description with name and unit only", r =>
        {
            Identify(r);
            r.Messages.Define(10, 206, [new(0, Base.UInt8), new(1, Base.UInt8), new(2, Base.UInt8), new(3, Base.String, 6), new(8, Base.String, 6)]);
            r.Messages.Write(10, 0, 0, 0x84, Name, Units);
        });
        yield return Case("C07", "no-type", "a description without base type is of bytes, so its numbers are not read as words", r =>
        {
            Identify(r);
            r.Messages.Define(10, 206, [new(0, Base.UInt8), new(1, Base.UInt8), new(3, Base.String, 6), new(8, Base.String, 6)]);
            r.Messages.Write(10, 0, 0, Name, Units);
        });
        yield return Case("C08", "native-message-misused", "the native message number holds the field number; name and unit say power", r => Describe(Identify(r), nativeMessage: 7, nativeField: 255));
        yield return Case("C08", "native-mapping-alone", "mapped to power, but neither name nor unit agree", r => Describe(Identify(r), "Cadence2\0"u8.ToArray(), "rpm\0"u8.ToArray()), 0);
        yield return Case("C09", "size-does-not-fit", "two bytes for a field described as uint32", r => Describe(Identify(r), type: 0x86), 0, null, (DeveloperFieldSizeMismatch, Skip));
        yield return Case("C10", "unknown-type", "described with base type 0x9F", r => Describe(Identify(r), type: 0x9F), 0, null, (DeveloperBaseTypeUnknown, Skip));
    }

    private static IEnumerable<HazardCase> Meanings()
    {
        yield return Case("C11", "power-only-there", "no native power; the developer field is mapped to it", r => Describe(Identify(r), "Run Power\0"u8.ToArray()));
        yield return Case("C11", "form-power", "form power is not the rider's power", r => Describe(Identify(r), "Form Power\0"u8.ToArray()), 0);
        yield return Case("C11", "air-power", "air power is not the rider's power", r => Describe(Identify(r), "Air Power\0"u8.ToArray()), 0);
        var ride = new RideBuilder().Open();
        Describe(Identify(ride));
        ride.Messages.Define(RecordType, 20, [Time, Power], developerFields: [Field]);
        for (var i = 0; i < 10; i++)
            ride.Record(i < 8 ? 200 : 0, Start + (uint)i, i < 8 ? 200 : FitValue.Missing, Watts);
        yield return Made("C12", "both", "native and developer power: the native one wins where it is there", ride.Close(seconds: 10), 10 * Watts) with
        {
            Also = f => Assert.Equal([200, Watts], new[] { f.Parts[0].Records.PowerOrDeveloperPower(7), f.Parts[0].Records.PowerOrDeveloperPower(8) }),
        };
    }
}
