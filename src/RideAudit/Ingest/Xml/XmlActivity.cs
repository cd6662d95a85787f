using RideAudit.Ingest.Tracks;

namespace RideAudit.Ingest.Xml;

/// <summary>One activity of a TCX or GPX file, as read so far.</summary>
internal sealed class XmlActivity
{
    public string? Sport { get; set; }

    public SampleRows Rows { get; } = new();

    /// <summary>Points without a time.</summary>
    public int Untimed { get; set; }

    /// <summary>Values that are no numbers.</summary>
    public int Unreadable { get; set; }

    /// <summary>Sum of its laps' timer times, s; null without any.</summary>
    public double? TimerSeconds { get; set; }

    /// <summary>Start of its first lap, Unix seconds; null without one.</summary>
    public long? StartSecond { get; set; }

    /// <summary>True when two of its tracks lie more than 10 s apart: a pause that no lap time can deny.</summary>
    public bool HasTrackGaps { get; set; }

    /// <summary>Local minus universal time as its timestamps write it, s; null where they write none, or Z.</summary>
    public long? OffsetSeconds { get; set; }
}
