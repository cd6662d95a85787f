using System.Globalization;

namespace RideAudit.Tests.Ingest;

/// <summary>Writes TCX and GPX text for tests: a point a second from 2026-05-05T17:00:00Z, 200 W, 140 bpm.</summary>
internal static class XmlSketch
{
    public static string Tcx(int seconds, string sport = "Biking", Func<int, string?>? track = null) => $"""
        <?xml version="1.0" encoding="UTF-8"?>
        <TrainingCenterDatabase xmlns="http://www.garmin.com/xmlschemas/TrainingCenterDatabase/v2" xmlns:ns3="http://www.garmin.com/xmlschemas/ActivityExtension/v2">
         <Activities><Activity Sport="{sport}"><Id>2026-05-05T17:00:00Z</Id>
          <Lap StartTime="2026-05-05T17:00:00Z"><TotalTimeSeconds>{seconds}.0</TotalTimeSeconds><DistanceMeters>{seconds * 10}</DistanceMeters><Calories>9</Calories>
           <AverageHeartRateBpm><Value>99</Value></AverageHeartRateBpm><Cadence>55</Cadence>
           <Track>{string.Concat(Enumerable.Range(0, seconds).Select(i => track is null ? TcxPoint(i) : track(i)))}</Track>
          </Lap><Creator><Name>A device</Name></Creator></Activity></Activities>
        </TrainingCenterDatabase>
        """;

    public static string TcxPoint(int i, string watts = "200") => $"""
        <Trackpoint><Time>{At(i)}</Time><Position><LatitudeDegrees>38.7</LatitudeDegrees><LongitudeDegrees>-9.1</LongitudeDegrees></Position>
        <AltitudeMeters>50.5</AltitudeMeters><DistanceMeters>{i * 10}</DistanceMeters><HeartRateBpm><Value>140</Value></HeartRateBpm><Cadence>90</Cadence>
        <Extensions><ns3:TPX><ns3:Speed>10.0</ns3:Speed><ns3:Watts>{watts}</ns3:Watts></ns3:TPX></Extensions></Trackpoint>
        """;

    public static string Gpx(int seconds, string? type = "cycling", Func<int, string>? extensions = null, Func<int, bool>? has = null) => $"""
        <?xml version="1.0" encoding="UTF-8"?>
        <gpx version="1.1" creator="A device" xmlns="http://www.topografix.com/GPX/1/1" xmlns:gpxtpx="http://www.garmin.com/xmlschemas/TrackPointExtension/v1">
        <metadata><time>2020-01-01T00:00:00Z</time></metadata><wpt lat="38.7" lon="-9.1"><time>2019-01-01T00:00:00Z</time></wpt>
        <trk><name>A name</name>{(type is null ? "" : $"<type>{type}</type>")}<trkseg>
        {string.Concat(Enumerable.Range(0, seconds).Where(i => has?.Invoke(i) ?? true).Select(i => $"<trkpt lat=\"38.7\" lon=\"-9.1\"><ele>50.5</ele><time>{At(i)}</time><extensions>{extensions?.Invoke(i) ?? GpxExtensions}</extensions></trkpt>"))}
        </trkseg></trk></gpx>
        """;

    public const string GpxExtensions = "<power>200</power><gpxtpx:TrackPointExtension><gpxtpx:atemp>20</gpxtpx:atemp><gpxtpx:hr>140</gpxtpx:hr><gpxtpx:cad>90</gpxtpx:cad></gpxtpx:TrackPointExtension>";

    public static string At(int i) => DateTimeOffset.FromUnixTimeSeconds(1_778_000_400 + i).ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
}
