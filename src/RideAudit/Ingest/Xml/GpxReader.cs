using System.Xml;

namespace RideAudit.Ingest.Xml;

/// <summary>Reads GPX recordings: one a track. Waypoints and routes are no rides.</summary>
/// <remarks>
/// Elements are known by local name, power and heart rate by the usual names in a point's extensions (common practice, no source).
/// The format has no timer: silences are pauses. Source: the GPX 1.1 schema (from memory).
/// </remarks>
internal static class GpxReader
{
    public static FileContent Read(string name, byte[] bytes, IngestContext context) =>
        XmlRecordings.Read(name, bytes, "GPX", ReadTracks, context);

    private static void ReadTracks(XmlReader xml, List<XmlActivity> activities)
    {
        XmlActivity? current = null;
        while (xml.Read())
        {
            if (xml.NodeType == XmlNodeType.EndElement && xml.LocalName == "trk")
                current = null;
            if (xml.NodeType != XmlNodeType.Element)
                continue;
            switch (xml.LocalName)
            {
                case "trk":
                    activities.Add(current = new XmlActivity());
                    break;
                case "rte":
                    activities.Add(new XmlActivity { Untimed = 1 });
                    break;
                case "trkpt" when current is not null:
                    XmlPoint.Read(xml, current);
                    break;
                case "type" when current is not null && !xml.IsEmptyElement && xml.Read() && xml.NodeType == XmlNodeType.Text:
                    current.Sport ??= xml.Value;
                    break;
            }
        }
    }
}
