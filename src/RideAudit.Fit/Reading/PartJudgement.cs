namespace RideAudit.Fit.Reading;

/// <summary>Faults that concern a part as a whole.</summary>
internal static class PartJudgement
{
    public static void Judge(PartContent content, long start, FaultLog log)
    {
        if (content.Records.Count == 0)
            return;
        if (content.Sessions.Count == 0 || content.Activity is null)
            log.Add(start, FitFaultCode.Incomplete, ActionFor(content), MissingText(content));
        if (IsClockUnset(content))
            log.Add(start, FitFaultCode.ClockUnset, FitFaultAction.Salvage, "times count from the device's power-on: the date of this recording is unknown");
    }

    /// <summary>True if the first record that has a time has one before any date.</summary>
    public static bool IsClockUnset(PartContent content)
    {
        foreach (var time in content.Records.Times)
        {
            if (time != Messages.RecordChannels.NoTime)
                return !FitTime.IsDate(time);
        }

        return false;
    }

    private static FitFaultAction ActionFor(PartContent content) =>
        content.Sessions.Count == 0 ? FitFaultAction.Salvage : FitFaultAction.Warn;

    private static string MissingText(PartContent content) => (content.Sessions.Count, content.Activity) switch
    {
        (0, null) => "no session and no activity message: the recording was not closed",
        (0, _) => "no session message: the recording was not closed properly",
        _ => "no activity message: the rider's clock is unknown",
    };
}
