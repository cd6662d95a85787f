namespace RideAudit.Fit;

/// <summary>How much damage a decode puts up with before it stops.</summary>
public enum DamageTolerance
{
    /// <summary>Keep everything that can be kept: skip damaged stretches, look for the place where the stream makes sense again, search tails for further parts.</summary>
    Tolerant,

    /// <summary>Keep what stands before the first break in a part's message stream, and do not look behind it.</summary>
    UpToFirstBreak,

    /// <summary>Stop the whole decode at the first fault of any kind; what was decoded before it is returned.</summary>
    Strict,
}
