using System.Globalization;
using RideAudit.Fit;
using RideAudit.Fit.Messages;
using RideAudit.Fit.Protocol;
using RideAudit.Fit.Writing;

namespace RideAudit.Benchmarks.Roster;

/// <summary>Makes a coach's folder: riders who do not exist, each with a year of rides at 1 Hz.</summary>
internal static class RosterFolder
{
    private const long FirstMondayUnix = 1_748_822_400; // 2025-06-02T00:00:00Z
    private const int WeekSeconds = 7 * 86_400;

    private static readonly (int Day, int Hour, int Minutes, double Share)[] Week =
        [(1, 17, 65, 0.80), (2, 17, 40, 0.55), (3, 17, 75, 0.76), (5, 8, 160, 0.66), (6, 9, 80, 0.64)];

    /// <summary>Writes the folder.</summary>
    /// <param name="folder">Made if need be.</param>
    /// <param name="riders">Riders, one sub-folder each.</param>
    /// <param name="weeks">Weeks of five rides.</param>
    public static void Make(string folder, int riders, int weeks) => Parallel.For(1, riders + 1, rider =>
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"rider-{rider:00}");
        var sub = Directory.CreateDirectory(Path.Combine(folder, name)).FullName;
        File.WriteAllText(Path.Combine(sub, "rider.toml"), $"label = \"{name}\"\ntime_zone = \"Europe/Lisbon\"\n\n[[threshold]]\nfrom = 2025-01-01\npower_w = {200 + 3 * rider}\n\n[plan]\nweekly_hours = 7.0\n");
        var random = new Random(rider);
        for (var week = 0; week < weeks; week++)
            foreach (var (day, hour, minutes, share) in Week)
            {
                var start = FirstMondayUnix + week * (long)WeekSeconds + day * 86_400 + hour * 3600 + random.Next(1200);
                var file = string.Create(CultureInfo.InvariantCulture, $"{week + 1:00}-{day}.fit");
                File.WriteAllBytes(Path.Combine(sub, file), Ride(start, minutes * 60, share * (200 + 3 * rider), random));
            }
    });

    private static byte[] Ride(long startUnix, int seconds, double meanW, Random random)
    {
        var start = FitTime.FromUnixSeconds(startUnix);
        var writer = new FitWriter();
        writer.WriteFileId(new FitFileId(FitFileType.Activity, 255, 0, start));
        writer.WriteEvent(new FitEvent(start, FitEvent.Timer, 0));
        writer.Messages.Define(11, 20, [new(253, FitBaseType.UInt32), new(7, FitBaseType.UInt16), new(3, FitBaseType.UInt8), new(4, FitBaseType.UInt8), new(5, FitBaseType.UInt32)]);
        for (var i = 0; i < seconds; i++)
        {
            var power = Math.Max(0, (int)(meanW * (0.7 + 0.6 * random.NextDouble())));
            writer.Messages.Write(11, start + (uint)i, power, 120 + power / 8, 85 + i % 7, i * 800);
        }
        var end = start + (uint)seconds;
        writer.WriteEvent(new FitEvent(end, FitEvent.Timer, 4));
        writer.WriteSession(new FitSession { Timestamp = end, StartTime = start, Sport = 2, SubSport = 7, TotalElapsedSeconds = seconds, TotalTimerSeconds = seconds });
        writer.WriteActivity(new FitActivity(end, end + 3600, seconds, 1));
        return writer.Finish();
    }
}
