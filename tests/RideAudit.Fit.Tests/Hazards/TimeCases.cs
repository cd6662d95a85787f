using static RideAudit.Fit.Tests.Hazards.RideBuilder;
using Base = RideAudit.Fit.Protocol.FitBaseType;

namespace RideAudit.Fit.Tests.Hazards;

/// <summary>Rows E: clocks, pauses and gaps. The reader hands these on as they are; only an unset clock is a fault.</summary>
internal static class TimeCases
{
    private const uint SincePowerOn = 20_000_000;

    public static IEnumerable<HazardCase> All() => [.. Clocks(), .. Orders(), .. Timers(), .. Offsets()];

    private static HazardCase Case(string row, string name, string what, RideBuilder ride, Action<FitPart>? check = null) =>
        new(row, name, what, ride.Finish()) { Records = ride.Records, PowerSum = ride.PowerSum, Also = check is null ? null : f => check(f.Parts[0]) };

    private static RideBuilder At(params uint[] seconds)
    {
        var ride = new RideBuilder().Open().DefineRecords();
        foreach (var second in seconds)
            ride.Ride((int)second, (int)second + 1);
        return ride;
    }

    private static uint[] Seconds(int from, int to, int step = 1) => [.. Enumerable.Range(from, to - from).Where(s => s % step == 0).Select(s => (uint)s)];

    private static IEnumerable<HazardCase> Clocks()
    {
        yield return Case("E01", "clock-unset", "times count from power-on", Whole(start: SincePowerOn), p => Assert.True(p.IsClockUnset)) with
        {
            Faults = [(FitFaultCode.ClockUnset, FitFaultAction.Salvage)],
        };
        var set = new RideBuilder().Open(SincePowerOn).DefineRecords().Ride(0, 20, SincePowerOn).Ride(20, 40).Close();
        yield return Case("E02", "clock-set-in-mid-ride", "the clock is set after 20 records", set, p => Assert.True(p.IsClockUnset)) with
        {
            Faults = [(FitFaultCode.ClockUnset, FitFaultAction.Salvage)],
        };
        var created = new RideBuilder().FileId(Start + 518_400).Timer(Start, 0).DefineRecords().Ride(0, 20).Close(seconds: 20);
        yield return Case("E21", "created-later", "file_id was made six days after the ride", created, p => Assert.Equal(Start, p.Sessions[0].StartTime));
    }

    private static IEnumerable<HazardCase> Orders()
    {
        yield return Case("E03", "steps-back", "two steps back by a second", At([.. Seconds(0, 10), 8, .. Seconds(10, 20), 18, .. Seconds(20, 30)]).Close(seconds: 30),
            p =>
            {
                var order = p.Records.InTimeOrder();
                Assert.Equal(8, order[8]);
                Assert.Equal(10, order[9]);
            });
        yield return Case("E04", "duplicate-times", "three times twice, with other values", At([.. Seconds(0, 10), 9, .. Seconds(10, 20), 19, 19]).Close(seconds: 20));
        yield return Case("E05", "duplicate-times-disjoint", "each second in two records: power in one, heart rate in the other", Disjoint());
        yield return Case("E11", "smart-recording", "a record every four seconds", At(Seconds(0, 80, 4)).Close(seconds: 80));
        yield return Case("E12", "gap-timer-running", "30 s without a record while the timer runs", At([.. Seconds(0, 15), .. Seconds(45, 60)]).Close(seconds: 60));
    }

    private static RideBuilder Disjoint()
    {
        var ride = new RideBuilder().Open();
        ride.Messages.Define(RecordType, 20, [Time, Power]);
        ride.Messages.Define(7, 20, [Time, HeartRate]);
        for (var i = 0; i < 15; i++)
        {
            ride.Record(PowerAt(i), Start + (uint)i, PowerAt(i));
            ride.Messages.Write(7, Start + (uint)i, 140);
            ride.Count(0);
        }

        return ride.Close(seconds: 15);
    }

    private static IEnumerable<HazardCase> Timers()
    {
        var early = new RideBuilder().FileId().DefineRecords().Ride(0, 10).Timer(Start + 10, 0).DefineRecords().Ride(10, 30).Close(seconds: 30);
        yield return Case("E06", "records-before-start", "ten records before the timer starts", early, p => Assert.True(p.Events[0].StartsTimer));
        var stopFirst = new RideBuilder().FileId().Timer(Start, 4).Timer(Start + 1, 0).DefineRecords().Ride(1, 20).Session(seconds: 20).Activity(Start + 20);
        yield return Case("E07", "stop-first", "the first timer event is a stop, the last start has none", stopFirst, p => Assert.True(p.Events[0].StopsTimer));
        var none = new RideBuilder().FileId().DefineRecords().Ride(0, 10).Ride(40, 60).Session(seconds: 60).Activity(Start + 60);
        yield return Case("E08", "no-timer-events", "no timer events at all", none, p => Assert.Empty(p.Events));
        foreach (var type in (int[])[1, 4, 8, 9])
        {
            var paused = new RideBuilder().Open().DefineRecords().Ride(0, 10).Timer(Start + 10, type).Timer(Start + 60, 0).DefineRecords().Ride(60, 70).Close(seconds: 70);
            yield return Case("E09", $"pause-by-stop-{type}", $"a pause by stop type {type}", paused, p => Assert.True(p.Events[1].StopsTimer));
        }

        var lone = new RideBuilder().Open().DefineRecords().Ride(0, 10).Timer(Start + 10, 1).DefineRecords().Ride(300, 301).Timer(Start + 600, 0).DefineRecords().Ride(600, 610).Close(seconds: 610);
        yield return Case("E10", "record-in-pause", "one record in the middle of a pause", lone);
        var leftOn = new RideBuilder().Open().DefineRecords().Ride(0, 20).Timer(Start + 20, 4).Session(seconds: 20).Activity(Start + 30_000);
        yield return Case("E13", "left-on", "the unit was left on for eight hours", leftOn);
        yield return Case("E14", "activity-timer-wrong", "the activity's timer time is not the session's", Whole(20), p => Assert.NotEqual(p.Activity!.TotalTimerSeconds, p.Sessions[0].TotalTimerSeconds));
        var shortElapsed = new RideBuilder().Open().DefineRecords().Ride(0, 20).Timer(Start + 20, 4).Session(seconds: 15).Activity(Start + 20);
        yield return Case("E15", "records-longer-than-timer", "the records span more than the session's time", shortElapsed);
    }

    private static IEnumerable<HazardCase> Offsets()
    {
        yield return Case("E16", "local-offset", "local time an hour ahead", Closed(3600), p => Assert.Equal(3600, p.Activity!.LocalOffsetSeconds));
        yield return Case("E17", "local-nonsense", "local_timestamp is 0", Closed(-(Start + 20)), p => Assert.Equal(0u, p.Activity!.LocalTimestamp));
        yield return Case("E18", "local-equals-universal", "local_timestamp is the timestamp", Closed(0), p => Assert.Equal(0, p.Activity!.LocalOffsetSeconds));
        var settings = new RideBuilder().Open();
        settings.Messages.Define(3, 2, [new(0, Base.UInt8), new(1, Base.UInt32), new(2, Base.UInt32)]);
        settings.Messages.Write(3, 0, 0, 4_294_952_896L);
        settings.Messages.Define(6, 162, [Time, new(1, Base.UInt32), new(3, Base.UInt32)]);
        settings.Messages.Write(6, Start, Start, Start - 14_400);
        yield return Case("E19", "offset-elsewhere", "no local_timestamp, but a negative time_offset and a timestamp_correlation", settings.DefineRecords().Ride(0, 20).Timer(Start + 20, 4).Session(seconds: 20).ActivityWithoutLocalTime(), p =>
        {
            Assert.Null(p.Activity!.LocalOffsetSeconds);
            Assert.Equal(-14_400, p.DeviceSettings[0].TimeOffsetSeconds);
            Assert.Equal(-14_400, p.TimestampCorrelations[0].LocalOffsetSeconds);
        });
        var fraction = new RideBuilder().Open();
        fraction.Messages.Define(6, 162, [Time, new(0, Base.UInt16)]);
        fraction.Messages.Write(6, Start, 16_384);
        yield return Case("E20", "fractional-time", "a timestamp with half a second", fraction.DefineRecords().Ride(0, 20).Close(seconds: 20), p => Assert.Equal(0.5, p.TimestampCorrelations[0].FractionSeconds));
    }

    private static RideBuilder Closed(long localOffset) =>
        new RideBuilder().Open().DefineRecords().Ride(0, 20).Timer(Start + 20, 4).Session(seconds: 20).Activity(Start + 20, localOffset);

    private static RideBuilder ActivityWithoutLocalTime(this RideBuilder ride)
    {
        ride.Messages.Define(5, 34, [Time, new(0, Base.UInt32)]);
        ride.Messages.Write(5, Start + 20, 20_000);
        return ride;
    }
}
