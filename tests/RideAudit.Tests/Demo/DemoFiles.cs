using System.Globalization;
using System.Text;
using NodaTime;
using RideAudit.Fit;
using RideAudit.Fit.Messages;
using RideAudit.Fit.Protocol;
using RideAudit.Fit.Writing;

namespace RideAudit.Tests.Demo;

/// <summary>Writes the demo's recordings as files.</summary>
internal static class DemoFiles
{
    private const byte RecordLocal = 11;
    private const ushort RecordGlobal = 20;
    private static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb["Europe/Lisbon"];

    /// <summary>Every file of the demo by name, the rider file aside.</summary>
    public static SortedDictionary<string, byte[]> All()
    {
        var files = new SortedDictionary<string, byte[]>(StringComparer.Ordinal);
        ulong seed = 20260302;
        foreach (var ride in DemoScenario.Rides())
        {
            var samples = DemoSamples.Of(ride, seed++);
            var name = ride.Name.Replace(".fit", "", StringComparison.Ordinal);
            files.Add(name + (ride.Csv ? ".csv" : ".fit"), ride.Csv ? Csv(ride, samples) : Fit(ride, samples));
        }
        return files;
    }

    private static byte[] Fit(DemoRide ride, DemoSamples samples)
    {
        var instant = Zone.AtLeniently(ride.Start).ToInstant();
        var start = FitTime.FromUnixSeconds(instant.ToUnixTimeSeconds());
        var offset = Zone.GetUtcOffset(instant).Seconds;
        var writer = new FitWriter();
        writer.WriteFileId(new FitFileId(FitFileType.Activity, 255, 0, start));
        writer.WriteSport(new FitSport(2, ride.Indoor ? (byte)6 : (byte)7));
        var end = Records(writer, ride, samples, start);
        var elapsed = end - start;
        writer.WriteLap(new FitLap { Timestamp = end, StartTime = start, TotalElapsedSeconds = elapsed, TotalTimerSeconds = ride.Seconds });
        writer.WriteSession(new FitSession
        {
            Timestamp = end,
            StartTime = start,
            Sport = 2,
            SubSport = ride.Indoor ? (byte)6 : (byte)7,
            TotalElapsedSeconds = elapsed,
            TotalTimerSeconds = ride.Seconds,
            TotalDistanceM = ride.Indoor ? null : samples.DistanceM[^1],
            MessageIndex = 0,
            FirstLapIndex = 0,
            NumLaps = 1,
        });
        writer.WriteActivity(new FitActivity(end, (uint)(end + offset), ride.Seconds, 1));
        return writer.Finish();
    }

    private static uint Records(FitWriter writer, DemoRide ride, DemoSamples samples, uint start)
    {
        List<FitFieldLayout> fields = [new(253, FitBaseType.UInt32), new(3, FitBaseType.UInt8), new(4, FitBaseType.UInt8)];
        if (ride.HasPower)
            fields.Add(new FitFieldLayout(7, FitBaseType.UInt16));
        if (!ride.Indoor)
            fields.Add(new FitFieldLayout(5, FitBaseType.UInt32));
        writer.WriteEvent(new FitEvent(start, FitEvent.Timer, 0));
        writer.Messages.Define(RecordLocal, RecordGlobal, [.. fields]);
        var clock = start;
        for (var i = 0; i < ride.Seconds; i++, clock++)
        {
            if (ride.Stops.FirstOrDefault(s => s.After == i) is { Seconds: > 0 } stop)
            {
                writer.WriteEvent(new FitEvent(clock, FitEvent.Timer, 4));
                clock += (uint)stop.Seconds;
                writer.WriteEvent(new FitEvent(clock, FitEvent.Timer, 0));
            }
            List<FitValue> values = [clock, samples.HeartRateBpm[i], samples.CadenceRpm[i]];
            if (ride.HasPower)
                values.Add(samples.PowerW[i]);
            if (!ride.Indoor)
                values.Add((int)Math.Round(samples.DistanceM[i] * 100));
            writer.Messages.Write(RecordLocal, [.. values]);
        }
        writer.WriteEvent(new FitEvent(clock, FitEvent.Timer, 4));
        return clock;
    }

    private static byte[] Csv(DemoRide ride, DemoSamples samples)
    {
        var text = new StringBuilder("timestamp,power (W),heart rate (bpm),cadence (rpm),distance (m)\r\n");
        var start = Zone.AtLeniently(ride.Start);
        for (var i = 0; i < ride.Seconds; i++)
        {
            var at = start.PlusSeconds(i);
            text.Append(CultureInfo.InvariantCulture, $"{at.ToString("uuuu-MM-dd'T'HH:mm:sso<+HH:mm>", CultureInfo.InvariantCulture)},{samples.PowerW[i]},{samples.HeartRateBpm[i]},{samples.CadenceRpm[i]},{samples.DistanceM[i]:0.0}\r\n");
        }
        return Encoding.UTF8.GetBytes(text.ToString());
    }
}
