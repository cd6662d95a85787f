using System.Globalization;
using System.Text;
using NodaTime;
using NodaTime.Text;
using RideAudit.Fit;
using RideAudit.Fit.Messages;
using RideAudit.Fit.Protocol;
using RideAudit.Fit.Writing;

namespace RideAudit.Tests.Simulation;

/// <summary>Writes simulated rides as the files that devices leave.</summary>
internal static class SimulatedFiles
{
    private const byte RecordLocal = 11;
    private const ushort RecordGlobal = 20;
    private static readonly LocalDateTimePattern Name = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd-HHmm");

    /// <summary>A file's name without ending, as devices name them: 2026-05-04-1800.</summary>
    public static string NameAt(OffsetDateTime start) => Name.Format(start.LocalDateTime);

    /// <summary>A CSV file with stamped seconds.</summary>
    public static byte[] Csv(SimulatedRide ride, OffsetDateTime start)
    {
        var text = new StringBuilder("timestamp,power (W),heart rate (bpm),cadence (rpm)\r\n");
        for (var i = 0; i < ride.PowerW.Length; i++)
        {
            var at = OffsetDateTimePattern.GeneralIso.Format(start.PlusSeconds(i));
            text.Append(CultureInfo.InvariantCulture, $"{at},{ride.PowerW[i]},{ride.HeartRateBpm[i]},{ride.CadenceRpm[i]}\r\n");
        }
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    /// <summary>An activity file with timer events, a session and the local time.</summary>
    public static byte[] Fit(SimulatedRide ride, OffsetDateTime start)
    {
        var indoors = ride.Session.On == Surroundings.Indoors;
        var subSport = indoors ? (byte)6 : (byte)7;
        var first = FitTime.FromUnixSeconds(start.ToInstant().ToUnixTimeSeconds());
        var end = first + (uint)ride.PowerW.Length;
        var writer = new FitWriter();
        writer.WriteFileId(new FitFileId(FitFileType.Activity, 255, 0, first));
        writer.WriteSport(new FitSport(2, subSport));
        writer.WriteEvent(new FitEvent(first, FitEvent.Timer, 0));
        Records(writer, ride, first);
        writer.WriteEvent(new FitEvent(end, FitEvent.Timer, 4));
        writer.WriteLap(new FitLap { Timestamp = end, StartTime = first, TotalElapsedSeconds = ride.PowerW.Length, TotalTimerSeconds = ride.PowerW.Length });
        writer.WriteSession(new FitSession
        {
            Timestamp = end,
            StartTime = first,
            Sport = 2,
            SubSport = subSport,
            TotalElapsedSeconds = ride.PowerW.Length,
            TotalTimerSeconds = ride.PowerW.Length,
            MessageIndex = 0,
            FirstLapIndex = 0,
            NumLaps = 1,
        });
        writer.WriteActivity(new FitActivity(end, (uint)(end + start.Offset.Seconds), ride.PowerW.Length, 1));
        return writer.Finish();
    }

    private static void Records(FitWriter writer, SimulatedRide ride, uint first)
    {
        FitFieldLayout[] fields = [new(253, FitBaseType.UInt32), new(3, FitBaseType.UInt8), new(4, FitBaseType.UInt8), new(7, FitBaseType.UInt16)];
        writer.Messages.Define(RecordLocal, RecordGlobal, fields);
        for (var i = 0; i < ride.PowerW.Length; i++)
            writer.Messages.Write(RecordLocal, first + (uint)i, (int)ride.HeartRateBpm[i], (int)ride.CadenceRpm[i], (int)ride.PowerW[i]);
    }
}
