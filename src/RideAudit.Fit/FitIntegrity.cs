namespace RideAudit.Fit;

/// <summary>The three independent facts about a part's integrity. A part can have any of them without the others.</summary>
/// <param name="Crc">Whether the closing CRC agrees; missing and wrong are two things.</param>
/// <param name="EndedAtDataEnd">True if the last message ended exactly where the data end and nothing was skipped.</param>
/// <param name="HasSession">True if a session message was read.</param>
/// <param name="HasActivity">True if an activity message was read.</param>
public readonly record struct FitIntegrity(FitCrcState Crc, bool EndedAtDataEnd, bool HasSession, bool HasActivity)
{
    /// <summary>True if the recording was closed properly: session and activity are both there. The CRC proves nothing about it.</summary>
    public bool IsComplete => HasSession && HasActivity;

    /// <summary>True if all facts hold.</summary>
    public bool IsIntact => Crc == FitCrcState.Agrees && EndedAtDataEnd && IsComplete;
}
