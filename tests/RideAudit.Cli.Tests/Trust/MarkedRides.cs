using System.IO.Compression;
using System.Text;
using RideAudit.Fit;
using RideAudit.Fit.Messages;
using RideAudit.Fit.Protocol;
using RideAudit.Fit.Writing;

namespace RideAudit.Cli.Tests.Trust;

/// <summary>Rides whose every private field holds something unmistakable.</summary>
internal static class MarkedRides
{
    /// <summary>Stands in every name, and in no word of the program.</summary>
    public const string Name = "zqxvk";

    /// <summary>The serial number, a position in degrees and in the units of FIT, as numbers and as bytes of a number may be written.</summary>
    public static readonly string[] Numbers = ["3141592653", "BB40E64D", "38.7654", "38,7654", "462489", "-9.8765", "9.87654", "-117833"];

    private const uint Serial = 3141592653;
    private const double Latitude = 38.76543;
    private const double Longitude = -9.87654;

    // Global message and field numbers as the public FIT profile has them (from memory). 2026-06-16T17:00:00Z
    private static readonly uint Start = FitTime.FromUnixSeconds(1_781_629_200);

    public static void WriteInto(TempFolder folder, string rides)
    {
        folder.Write($"{rides}/rider.toml", "label = \"Rider Kept\"\ntime_zone = \"Europe/Lisbon\"\n[[threshold]]\nfrom = 2026-01-05\npower_w = 240\n[plan]\nweekly_hours = 6\n");
        folder.Write($"{rides}/tuesday.fit", Ride(0)).Write($"{rides}/workout.fit", Workout());
        folder.Write($"{rides}/wednesday.tcx", Tcx(86_400)).Write($"{rides}/thursday.gpx", Gpx(2 * 86_400));
        folder.Write($"{rides}/friday.csv", Csv(3 * 86_400)).Write($"{rides}/broken.tcx", Tcx(4 * 86_400)[..400]);
        folder.Write($"{rides}/packed.zip", Zip(Ride(5 * 86_400)));
    }

    private static int Semicircles(double degrees) => (int)(degrees * 2147483648 / 180);

    private static byte[] Ride(uint after)
    {
        var (writer, start) = (new FitWriter(), Start + after);
        Message(writer, 0, (0, FitBaseType.Enum, 4), (1, FitBaseType.UInt16, 255), (3, FitBaseType.UInt32Z, Serial), (4, FitBaseType.UInt32, start), (8, FitBaseType.String, $"{Name} product"));
        // 23: device information, with maker, serial number, descriptor and product name; 3: the user's name and default names.
        Message(writer, 23, (253, FitBaseType.UInt32, start), (2, FitBaseType.UInt16, 255), (3, FitBaseType.UInt32Z, Serial), (19, FitBaseType.String, $"{Name} device"), (27, FitBaseType.String, $"{Name} head unit"));
        Message(writer, 3, (0, FitBaseType.String, $"{Name} Surname"), (1, FitBaseType.Enum, 1), (4, FitBaseType.UInt16, 700));
        Message(writer, 12, (0, FitBaseType.Enum, 2), (3, FitBaseType.String, $"{Name} sport"));
        writer.WriteWorkout(new FitWorkout($"{Name} workout", 2, 1));
        writer.WriteDeveloperPower($"{Name} field");
        writer.WriteEvent(new FitEvent(start, FitEvent.Timer, 0));
        for (uint i = 0; i < 1800; i++)
            Message(writer, 20, (253, FitBaseType.UInt32, start + i), (0, FitBaseType.SInt32, Semicircles(Latitude)), (1, FitBaseType.SInt32, Semicircles(Longitude)), (7, FitBaseType.UInt16, 180 + i % 40), (3, FitBaseType.UInt8, 140));
        writer.WriteEvent(new FitEvent(start + 1800, FitEvent.Timer, 4));
        Message(writer, 18, (253, FitBaseType.UInt32, start + 1800), (2, FitBaseType.UInt32, start), (3, FitBaseType.SInt32, Semicircles(Latitude)), (4, FitBaseType.SInt32, Semicircles(Longitude)), (5, FitBaseType.Enum, 2), (7, FitBaseType.UInt32, 1_800_000), (8, FitBaseType.UInt32, 1_800_000), (110, FitBaseType.String, $"{Name} profile"));
        writer.WriteActivity(new FitActivity(start + 1800, start + 1800 + 3600, 1800, 1));
        return writer.Finish();
    }

    private static byte[] Workout()
    {
        var writer = new FitWriter();
        writer.WriteFileId(new FitFileId(FitFileType.Workout, 255, 0, Start));
        writer.WriteWorkout(new FitWorkout($"{Name} workout", 2, 0));
        return writer.Finish();
    }

    private static void Message(FitWriter writer, ushort global, params (byte Number, FitBaseType Type, FitValue Value)[] fields)
    {
        const int FreeLocalType = 13;
        writer.Messages.Define(FreeLocalType, global, [.. fields.Select(f => f.Type == FitBaseType.String ? new FitFieldLayout(f.Number, f.Type, 40) : new FitFieldLayout(f.Number, f.Type))], FitByteOrder.LittleEndian);
        writer.Messages.Write(FreeLocalType, [.. fields.Select(f => f.Value)]);
    }

    private static string At(long second) => DateTimeOffset.FromUnixTimeSeconds(1_781_629_200 + second).ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", System.Globalization.CultureInfo.InvariantCulture);

    private static string Repeat(Func<int, string> point) => string.Concat(Enumerable.Range(0, 1800).Select(point));

    private static byte[] Tcx(long after) => Encoding.UTF8.GetBytes($"""
        <?xml version="1.0"?><TrainingCenterDatabase>
        <Activities><Activity Sport="Biking"><Id>{At(after)}</Id><Notes>{Name} note</Notes><Lap StartTime="{At(after)}"><TotalTimeSeconds>1800</TotalTimeSeconds><Notes>{Name}</Notes>
        <Track>{Repeat(i => $"<Trackpoint><Time>{At(after + i)}</Time><Position><LatitudeDegrees>{Latitude}</LatitudeDegrees><LongitudeDegrees>{Longitude}</LongitudeDegrees></Position><HeartRateBpm><Value>140</Value></HeartRateBpm><Extensions><TPX><Watts>{190 + i % 30}</Watts></TPX></Extensions></Trackpoint>")}</Track></Lap>
        <Training><Plan><Name>{Name} plan</Name></Plan></Training>
        <Creator><Name>{Name} unit</Name><UnitId>{Serial}</UnitId><ProductID>3111</ProductID></Creator></Activity></Activities>
        <Author><Name>{Name} author</Name><PartNumber>{Name}-1</PartNumber></Author></TrainingCenterDatabase>
        """);

    private static byte[] Gpx(long after) => Encoding.UTF8.GetBytes($"""
        <?xml version="1.0"?><gpx version="1.1" creator="{Name} maker">
        <metadata><name>{Name}</name><desc>{Name}</desc><author><name>{Name} author</name><email id="{Name}" domain="{Name}.example"/></author><copyright author="{Name}"/><link href="https://{Name}.example"/><keywords>{Name}</keywords></metadata>
        <wpt lat="{Latitude}" lon="{Longitude}"><name>{Name} home</name></wpt>
        <trk><name>{Name} track</name><cmt>{Name}</cmt><desc>{Name}</desc><src>{Name}</src><type>{Name}</type><trkseg>
        {Repeat(i => $"<trkpt lat=\"{Latitude}\" lon=\"{Longitude}\"><time>{At(after + i)}</time><name>{Name}</name><extensions><power>{185 + i % 35}</power></extensions></trkpt>")}</trkseg></trk></gpx>
        """);

    private static byte[] Csv(long after) => Encoding.UTF8.GetBytes(
        $"# {Name} export,serial {Serial}\ntime,power,heart rate,lat,lon,device,rider\n" + Repeat(i => $"{At(after + i)},{170 + i % 20},140,{Latitude},{Longitude},{Name} unit {Serial},{Name} Surname\n"));

    private static byte[] Zip(byte[] ride)
    {
        using var packed = new MemoryStream();
        using (var archive = new ZipArchive(packed, ZipArchiveMode.Create, leaveOpen: true))
        {
            archive.Comment = $"{Name} archive";
            var entry = archive.CreateEntry("saturday.fit");
            entry.Comment = $"{Name} entry";
            using var stream = entry.Open();
            stream.Write(ride);
        }
        return packed.ToArray();
    }
}
