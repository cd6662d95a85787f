using System.Xml;
using RideAudit.Ingest.Text;
using RideAudit.Ingest.Tracks;
using RideAudit.Rides;

namespace RideAudit.Ingest.Xml;

/// <summary>Makes recordings of what a TCX or GPX file holds, and says what was wrong with it.</summary>
internal static class XmlRecordings
{
    /// <summary>Reads activities until the text ends or breaks.</summary>
    /// <param name="name">The name the recordings are shown under.</param>
    /// <param name="bytes">The text in whatever encoding.</param>
    /// <param name="format">The format's name, for sentences.</param>
    /// <param name="read">Fills the list; what it holds when the text breaks is kept.</param>
    /// <param name="context">For the zone where timestamps have no offset.</param>
    public static FileContent Read(
        string name, byte[] bytes, string format, Action<XmlReader, List<XmlActivity>> read, IngestContext context)
    {
        var activities = new List<XmlActivity>();
        Break? broken = null;
        try
        {
            using var xml = XmlSource.Open(bytes);
            read(xml, activities);
        }
        catch (XmlException e)
        {
            broken = new Break(e.LineNumber);
        }
        var recordings = activities.Select(a => Recording(name, a, context)).OfType<Recording>().ToList();
        if (recordings.Count == 0)
            return RideEndings.Promise(name) ? Refuse(name, format, activities, broken) : FileContent.Nothing(name);
        return new FileContent
        {
            File = name,
            Recordings = [.. recordings.Select((r, i) => i == 0 ? r : r with { File = $"{name}#{i + 1}" })],
            Notices = [.. Notices(name, activities, broken)],
        };
    }

    private static Recording? Recording(string name, XmlActivity activity, IngestContext context)
    {
        var sport = XmlSports.Of(activity.Sport);
        if (activity.Rows.Count > 0)
            return TrackRecording.Of(name, sport, activity.Rows, 0, activity.HasTrackGaps ? null : activity.TimerSeconds, activity.OffsetSeconds, context);
        return activity is { StartSecond: { } start, TimerSeconds: { } timer }
            ? TrackRecording.OfTotals(name, sport, start, timer, activity.OffsetSeconds, context)
            : null;
    }

    private static FileContent Refuse(string name, string format, List<XmlActivity> activities, Break? broken)
    {
        if (broken is { } at)
            return FileContent.Unusable(name, "damaged", $"This {format} file cannot be read from line {at.Line} on, and no ride stands before it: export it again.");
        return activities.Exists(a => a.Untimed > 0)
            ? FileContent.Unusable(name, "not a ride", $"This {format} file is a route without times, not a ride: there is nothing in it to review.")
            : FileContent.Unusable(name, "not a ride", $"This {format} file holds no recorded ride: there is nothing in it to review.");
    }

    private static IEnumerable<FileNotice> Notices(string name, List<XmlActivity> activities, Break? broken)
    {
        var points = activities.Sum(a => a.Rows.Count);
        if (broken is { } at)
            yield return new FileNotice(name, "truncated", $"{points} of an unknown number of points", $"The file cannot be read from line {at.Line} on; the {points} points before it were kept: export it again.", false);
        var (untimed, unreadable) = (activities.Where(a => a.Rows.Count > 0).Sum(a => a.Untimed), activities.Sum(a => a.Unreadable));
        if (untimed > 0)
            yield return new FileNotice(name, "points without time", $"{points} points", $"{untimed} {(untimed == 1 ? "point has" : "points have")} no time and {(untimed == 1 ? "is" : "are")} left out.", false);
        if (unreadable > 0)
            yield return new FileNotice(name, "unreadable values", $"{points} points", $"{unreadable} {(unreadable == 1 ? "value is no number and counts" : "values are no numbers and count")} as missing.", false);
        if (activities.Exists(a => a.Rows.UsualStep() > GridBuilder.LongestHeldGapSeconds))
            yield return TrackRemarks.Sparse(name);
    }

    /// <summary>Where the text of an XML file broke off or was no XML.</summary>
    /// <param name="Line">Its line, 1 first.</param>
    private readonly record struct Break(int Line);

    /// <summary>Opens XML without ever looking outside the file: no document type, no entities, no other files.</summary>
    private static class XmlSource
    {
        private static readonly XmlReaderSettings Settings = new()
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
            IgnoreWhitespace = true,
            CheckCharacters = false,
            CloseInput = true,
        };

        public static XmlReader Open(byte[] bytes) => XmlReader.Create(new ShortMarkup(TextBytes.Reader(bytes)), Settings);
    }
}
