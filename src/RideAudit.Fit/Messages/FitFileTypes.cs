namespace RideAudit.Fit.Messages;

/// <summary>Words for file types, for messages to a person.</summary>
public static class FitFileTypes
{
    /// <summary>The type in words, with article: "a settings file".</summary>
    /// <param name="type">Any number, known or not.</param>
    public static string Describe(FitFileType type) => type switch
    {
        FitFileType.Device => "a device description",
        FitFileType.Settings => "a settings file",
        FitFileType.Sport => "a sport settings file",
        FitFileType.Activity => "an activity",
        FitFileType.Workout => "a planned workout",
        FitFileType.Course => "a course",
        FitFileType.Schedules => "a schedule",
        FitFileType.Weight => "a file of weight readings",
        FitFileType.Totals => "a file of totals",
        FitFileType.Goals => "a file of goals",
        FitFileType.BloodPressure => "a file of blood pressure readings",
        FitFileType.MonitoringA or FitFileType.MonitoringDaily or FitFileType.MonitoringB => "a file of all-day monitoring",
        FitFileType.ActivitySummary => "a summary of an activity without its records",
        FitFileType.Segment or FitFileType.SegmentList => "a file of road segments",
        _ => "a FIT file of kind " + ((byte)type).ToString(System.Globalization.CultureInfo.InvariantCulture),
    };
}
