using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>A part that has been read but not yet seen beside the others.</summary>
internal sealed record PartDraft(
    int Offset,
    int Length,
    FitHeader Header,
    FitCrcState Crc,
    bool EndedAtDataEnd,
    PartContent Content,
    FitFault[] Faults)
{
    /// <summary>True if the part holds nothing but heart rate of the activity before it.</summary>
    public bool IsHeartRateOnly => Content.HeartRate.Count > 0 && Content.Records.Count == 0 && Content.Sessions.Count == 0;

    public bool HasRecords => Content.Records.Count > 0;
}
