using System.Xml;
using NodaTime;
using RideAudit.Ingest.Text;
using RideAudit.Ingest.Tracks;

namespace RideAudit.Ingest.Xml;

/// <summary>Reads one track point by the local names of its elements, in whatever namespace. Its position is never read.</summary>
internal static class XmlPoint
{
    /// <summary>Reads the point the reader stands on and adds it to the activity.</summary>
    /// <param name="xml">Stands on the point's start; on its end afterwards.</param>
    /// <param name="activity">What the point belongs to.</param>
    /// <exception cref="XmlException">The text breaks off or is no XML.</exception>
    public static void Read(XmlReader xml, XmlActivity activity)
    {
        if (xml.IsEmptyElement)
        {
            activity.Untimed++;
            return;
        }
        var row = SampleRow.Missing;
        double? second = null;
        var (depth, parent, name) = (xml.Depth, "", "");
        while (xml.Read() && xml.Depth > depth)
        {
            if (xml.NodeType == XmlNodeType.Element)
                (parent, name) = (xml.Depth == depth + 1 ? "" : name == "" ? parent : name, xml.LocalName);
            else if (xml.NodeType == XmlNodeType.EndElement)
                (parent, name) = (xml.Depth == depth + 1 ? "" : parent, "");
            else if (xml.NodeType is XmlNodeType.Text or XmlNodeType.CDATA && IsTime(name))
                second = Time(xml.Value, activity);
            else if (xml.NodeType is XmlNodeType.Text or XmlNodeType.CDATA && ChannelOf(name, parent) is { } channel)
                Take(xml.Value, channel, ref row, activity);
        }
        if (second is { } at)
            activity.Rows.Add(at, row);
        else
            activity.Untimed++;
    }

    /// <summary>Both formats define their times as universal where they do not say otherwise.</summary>
    /// <returns>Unix seconds; null when the text is no timestamp.</returns>
    public static double? Time(string text, XmlActivity activity)
    {
        if (IsoTimes.Timestamp(text) is not { } stamp)
            return null;
        var offset = stamp.Offset ?? Offset.Zero;
        if (offset != Offset.Zero)
            activity.OffsetSeconds ??= offset.Seconds;
        return stamp.Local.WithOffset(offset).ToInstant().ToUnixTimeTicks() / 1e7;
    }

    private static void Take(string text, SampleRow.Channel channel, ref SampleRow row, XmlActivity activity)
    {
        if (WrittenNumbers.Parse(text, decimalComma: false) is { } number)
            row[channel] = (float)number;
        else if (!WrittenNumbers.IsMissing(text.Trim()))
            activity.Unreadable++;
    }

    private static bool IsTime(string name) => name.Equals("time", StringComparison.OrdinalIgnoreCase);

    private static SampleRow.Channel? ChannelOf(string name, string parent) => name.ToLowerInvariant() switch
    {
        "watts" or "power" or "powerinwatts" => SampleRow.Channel.Power,
        "hr" or "heartrate" => SampleRow.Channel.HeartRate,
        "value" when parent.Equals("HeartRateBpm", StringComparison.OrdinalIgnoreCase) => SampleRow.Channel.HeartRate,
        "cadence" or "cad" => SampleRow.Channel.Cadence,
        "speed" => SampleRow.Channel.Speed,
        "distancemeters" or "distance" => SampleRow.Channel.Distance,
        _ => null,
    };
}
