namespace RideAudit.Fit.Messages;

/// <summary>What a FIT file holds (file_id, field 0). Other numbers may occur and are kept as they are.</summary>
/// <remarks>Source: the protocol's profile, type "file".</remarks>
public enum FitFileType : byte
{
    /// <summary>Capabilities of a device.</summary>
    Device = 1,

    /// <summary>Device settings.</summary>
    Settings = 2,

    /// <summary>Sport settings.</summary>
    Sport = 3,

    /// <summary>A recorded activity.</summary>
    Activity = 4,

    /// <summary>A planned workout.</summary>
    Workout = 5,

    /// <summary>A course to follow.</summary>
    Course = 6,

    /// <summary>A schedule.</summary>
    Schedules = 7,

    /// <summary>Weight readings.</summary>
    Weight = 9,

    /// <summary>Totals.</summary>
    Totals = 10,

    /// <summary>Goals.</summary>
    Goals = 11,

    /// <summary>Blood pressure readings.</summary>
    BloodPressure = 14,

    /// <summary>All-day monitoring, first form.</summary>
    MonitoringA = 15,

    /// <summary>A summary of an activity without its records.</summary>
    ActivitySummary = 20,

    /// <summary>All-day monitoring, daily form.</summary>
    MonitoringDaily = 28,

    /// <summary>All-day monitoring, second form.</summary>
    MonitoringB = 32,

    /// <summary>A segment of road.</summary>
    Segment = 34,

    /// <summary>A list of segments.</summary>
    SegmentList = 35,
}
