using System.Text;
using RideAudit.Fit;
using RideAudit.Fit.Messages;
using RideAudit.Fit.Protocol;
using RideAudit.Fit.Writing;

namespace RideAudit.Web;

/// <summary>Reviews two made-up rides, so that the first that is dropped does not wait for the program to be prepared method by method.</summary>
internal static class WarmUp
{
    private const long FirstSecond = 1_780_300_800; // 2026-06-01T08:00:00Z
    private const int Seconds = 2400;
    private const string Rider = "time_zone = \"Europe/Lisbon\"\n[[threshold]]\nfrom = 2026-01-01\npower_w = 250\n[plan]\nweekly_hours = 6.5\n";

    /// <summary>Reads, judges and writes it; of what comes out nothing is kept.</summary>
    public static void Run()
    {
        var workshop = new Workshop("Europe/Lisbon", "2026-06-08", mayHoldRiderFile: true);
        workshop.Add("rider.toml", Encoding.UTF8.GetBytes(Rider));
        workshop.Add("ride.fit", Ride());
        workshop.Add("ride.csv", Rows());
        workshop.Gather();
        workshop.ReviewJson("", "");
        workshop.WeeksJson("");
        workshop.RidesJson("");
        workshop.RiderJson();
        workshop.PlanJson("");
    }

    private static byte[] Ride()
    {
        var start = FitTime.FromUnixSeconds(FirstSecond);
        var writer = new FitWriter();
        writer.WriteFileId(new FitFileId(FitFileType.Activity, 255, 0, start));
        writer.WriteEvent(new FitEvent(start, FitEvent.Timer, 0));
        writer.Messages.Define(11, 20, [new(253, FitBaseType.UInt32), new(7, FitBaseType.UInt16), new(3, FitBaseType.UInt8), new(4, FitBaseType.UInt8), new(5, FitBaseType.UInt32)]);
        for (var i = 0; i < Seconds; i++)
            writer.Messages.Write(11, start + (uint)i, 150 + i / 300 % 2 * 100, 130 + i % 20, 85 + i % 7, i * 800);
        var end = start + Seconds;
        writer.WriteEvent(new FitEvent(end, FitEvent.Timer, 4));
        writer.WriteSession(new FitSession { Timestamp = end, StartTime = start, Sport = 2, SubSport = 7, TotalElapsedSeconds = Seconds, TotalTimerSeconds = Seconds });
        writer.WriteActivity(new FitActivity(end, end + 3600, Seconds, 1));
        return writer.Finish();
    }

    private static byte[] Rows()
    {
        var text = new StringBuilder("timestamp,power (W),distance (m)\n");
        for (var minute = 10; minute < 20; minute++)
            for (var second = 10; second < 60; second++)
                text.Append("2026-06-02T08:").Append(minute).Append(':').Append(second).Append("Z,150,7.5\n");
        return Encoding.UTF8.GetBytes(text.ToString());
    }
}
