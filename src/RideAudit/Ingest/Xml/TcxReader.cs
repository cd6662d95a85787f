using System.Xml;
using RideAudit.Ingest.Text;
using RideAudit.Rides;

namespace RideAudit.Ingest.Xml;

/// <summary>Reads TCX recordings: activities, their laps' timer time and the points of their tracks. Courses and plans are no rides.</summary>
/// <remarks>Elements are known by local name. Source: the TrainingCenterDatabase v2 and ActivityExtension v2 schemas (from memory).</remarks>
internal static class TcxReader
{
    public static FileContent Read(string name, byte[] bytes, IngestContext context) =>
        XmlRecordings.Read(name, bytes, "TCX", ReadActivities, context);

    private static void ReadActivities(XmlReader xml, List<XmlActivity> activities)
    {
        XmlActivity? current = null;
        while (xml.Read())
        {
            if (xml.NodeType == XmlNodeType.EndElement && xml.LocalName == "Activity")
                current = null;
            if (xml.NodeType != XmlNodeType.Element)
                continue;
            if (xml.LocalName == "Activity")
                activities.Add(current = new XmlActivity { Sport = xml.GetAttribute("Sport") });
            else if (current is not null)
                Take(xml, current);
        }
    }

    private static void Take(XmlReader xml, XmlActivity activity)
    {
        switch (xml.LocalName)
        {
            case "Lap" when activity.StartSecond is null && xml.GetAttribute("StartTime") is { } start:
                activity.StartSecond = (long?)XmlPoint.Time(start, activity);
                break;
            case "TotalTimeSeconds" when !xml.IsEmptyElement && xml.Read() && xml.NodeType == XmlNodeType.Text:
                if (WrittenNumbers.Parse(xml.Value, decimalComma: false) is { } seconds and > 0)
                    activity.TimerSeconds = (activity.TimerSeconds ?? 0) + seconds;
                break;
            case "Track" when !xml.IsEmptyElement:
                ReadTrack(xml, activity);
                break;
        }
    }

    private static void ReadTrack(XmlReader xml, XmlActivity activity)
    {
        var (depth, before) = (xml.Depth, activity.Rows.Count);
        while (xml.Read() && xml.Depth > depth)
        {
            if (xml.NodeType != XmlNodeType.Element || xml.LocalName != "Trackpoint")
                continue;
            XmlPoint.Read(xml, activity);
            var seconds = activity.Rows.Seconds;
            if (before > 0 && activity.Rows.Count == before + 1 && seconds[before] - seconds[before - 1] > GridBuilder.LongestHeldGapSeconds)
                activity.HasTrackGaps = true;
        }
    }
}
