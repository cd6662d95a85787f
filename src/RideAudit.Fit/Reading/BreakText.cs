namespace RideAudit.Fit.Reading;

/// <summary>Sentences for breaks in a message stream.</summary>
internal static class BreakText
{
    public static string Describe(FitFaultCode code, byte header, bool isLast)
    {
        string what = code switch
        {
            FitFaultCode.UndefinedLocalType => $"a message of local type {new Protocol.RecordHeader(header).LocalType} that was never defined",
            FitFaultCode.StreamSlipped => "a record whose time is more than a day off, and messages behind it that make no sense",
            FitFaultCode.CorruptDefinition => "a definition that no device can mean",
            _ => "a message that does not fit into the rest of the data",
        };
        return isLast ? what + "; reading ends here" : what;
    }
}
