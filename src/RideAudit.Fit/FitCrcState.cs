namespace RideAudit.Fit;

/// <summary>What a part's closing CRC says.</summary>
public enum FitCrcState
{
    /// <summary>It agrees with the bytes.</summary>
    Agrees,

    /// <summary>It is there and does not agree.</summary>
    Differs,

    /// <summary>It is not there, or cut.</summary>
    Missing,
}
