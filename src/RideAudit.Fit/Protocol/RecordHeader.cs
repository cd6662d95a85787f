namespace RideAudit.Fit.Protocol;

/// <summary>The byte before every definition and data message.</summary>
internal readonly record struct RecordHeader(byte Value)
{
    public bool IsCompressed => (Value & FitConstants.CompressedTimeBit) != 0;

    public bool IsDefinition => (Value & (FitConstants.CompressedTimeBit | FitConstants.DefinitionBit)) == FitConstants.DefinitionBit;

    public bool HasDeveloperFields => (Value & FitConstants.DeveloperBit) != 0;

    public int LocalType => IsCompressed
        ? (Value >> FitConstants.CompressedLocalTypeShift) & FitConstants.CompressedLocalTypeMask
        : Value & FitConstants.LocalTypeMask;

    /// <summary>The time a compressed header means: the offset replaces the low five bits of the last time, one span later if it fell.</summary>
    public static uint ResolveTime(uint last, byte header)
    {
        var offset = (uint)header & FitConstants.TimeOffsetMask;
        var time = (last & ~(uint)FitConstants.TimeOffsetMask) + offset;
        return offset < (last & FitConstants.TimeOffsetMask) ? time + FitConstants.TimeOffsetSpan : time;
    }
}
