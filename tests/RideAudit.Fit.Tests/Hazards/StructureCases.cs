using RideAudit.Fit.Writing;
using static RideAudit.Fit.Tests.Hazards.RideBuilder;

namespace RideAudit.Fit.Tests.Hazards;

/// <summary>Rows F without heart rate: missing, misplaced and repeated structure.</summary>
internal static class StructureCases
{
    public static IEnumerable<HazardCase> All()
    {
        var crash = new RideBuilder().Open();
        crash.Messages.Define(6, 12, [new(0, RideAudit.Fit.Protocol.FitBaseType.Enum), new(1, RideAudit.Fit.Protocol.FitBaseType.Enum)]);
        crash.Messages.Write(6, 2, 7);
        yield return Case("F01", "no-session", "no session, but a sport message", crash.DefineRecords().Ride(0, 20).Timer(Start + 20, 4).Activity(Start + 20), p => Assert.Equal((byte)2, p.Sport!.Sport)) with
        {
            Sessions = 0,
            Faults = [(FitFaultCode.Incomplete, FitFaultAction.Salvage)],
        };
        yield return Case("F02", "no-activity", "no activity message", new RideBuilder().Open().DefineRecords().Ride(0, 20).Timer(Start + 20, 4).Session(seconds: 20)) with
        {
            Faults = [(FitFaultCode.Incomplete, FitFaultAction.Warn)],
        };
        var first = new RideBuilder().FileId().Session(seconds: 20).Activity(Start + 20).Timer(Start, 0).DefineRecords().Ride(0, 20).Timer(Start + 20, 4);
        yield return Case("F03", "summary-first", "session and activity before all records", first, p => Assert.True(p.Integrity.IsIntact));
        var late = new RideBuilder().FileId().DefineRecords().Ride(0, 20).Timer(Start, 0).Timer(Start + 20, 4).Session(seconds: 20).Activity(Start + 20);
        yield return Case("F04", "events-last", "all events after the records", late, p => Assert.Equal(Start, p.Events[0].Timestamp));
        yield return Case("F05", "two-sessions", "a run, then a ride", TwoSessions(1, 2)) with { Sessions = 2 };
        yield return Case("F06", "generic-sport", "a ride under sport 0", new RideBuilder().Open().DefineRecords().Ride(0, 20).Timer(Start + 20, 4).Session(seconds: 20, sport: 0).Activity(Start + 20));
        yield return Case("F07", "spike", "3,000 W in one second", Spike(), p => Assert.Equal(3000, p.Records.Power[5]));
        var same = Whole(25);
        yield return Case("F12", "twice-a", "the same bytes as F12-twice-b", same);
        yield return Case("F12", "twice-b", "the same bytes as F12-twice-a", same);
        yield return Case("F13", "two-devices-a", "a ride, by one device", Whole(40));
        yield return Case("F13", "two-devices-b", "the same ride by another device, four seconds later", Shifted());
        yield return Case("F16", "no-fix", "position 0, 0: positions are never read", NoFix());
        yield return Case("F15", "indoor", "power and heart rate only: no distance, no speed", Indoor(), p => Assert.All(p.Records.DistanceM.ToArray(), d => Assert.True(double.IsNaN(d))));
    }

    private static HazardCase Case(string row, string name, string what, RideBuilder ride, Action<FitPart>? check = null) =>
        new(row, name, what, ride.Finish()) { Records = ride.Records, PowerSum = ride.PowerSum, Also = check is null ? null : f => check(f.Parts[0]) };

    private static RideBuilder TwoSessions(byte first, byte second) => new RideBuilder().Open().DefineRecords().Ride(0, 40).Timer(Start + 40, 4)
        .Session(seconds: 20, sport: first).Session(Start + 20, 20, second, 1).Activity(Start + 40);

    private static RideBuilder Spike()
    {
        var ride = new RideBuilder().Open();
        ride.Messages.Define(RecordType, 20, [Time, Power]);
        for (var i = 0; i < 20; i++)
            ride.Record(i == 5 ? 3000 : 200, Start + (uint)i, i == 5 ? 3000 : 200);
        return ride.Close(seconds: 20);
    }

    private static RideBuilder Shifted()
    {
        var ride = new RideBuilder { Order = FitByteOrder.BigEndian }.Open(Start + 4);
        ride.Messages.Define(RecordType, 20, [Time, Power], FitByteOrder.BigEndian);
        for (var i = 0; i < 40; i++)
            ride.Record(PowerAt(i) * 99 / 100, Start + 4 + (uint)i, PowerAt(i) * 99 / 100);
        return ride.Close(Start + 4, 40);
    }

    private static RideBuilder NoFix()
    {
        var ride = new RideBuilder().Open();
        ride.Messages.Define(RecordType, 20, [Time, new(0, RideAudit.Fit.Protocol.FitBaseType.SInt32), new(1, RideAudit.Fit.Protocol.FitBaseType.SInt32), Power]);
        for (var i = 0; i < 20; i++)
            ride.Record(PowerAt(i), Start + (uint)i, 0, 0, PowerAt(i));
        return ride.Close(seconds: 20);
    }

    private static RideBuilder Indoor()
    {
        var ride = new RideBuilder().Open();
        ride.Messages.Define(RecordType, 20, [Time, Power, HeartRate]);
        for (var i = 0; i < 20; i++)
            ride.Record(PowerAt(i), Start + (uint)i, PowerAt(i), 140);
        return ride.Close(seconds: 20);
    }
}
