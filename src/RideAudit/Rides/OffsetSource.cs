namespace RideAudit.Rides;

/// <summary>Where a recording's UTC offset came from.</summary>
public enum OffsetSource
{
    /// <summary>The file's own local time.</summary>
    File,

    /// <summary>The rider file's time zone.</summary>
    RiderZone,

    /// <summary>The machine's time zone.</summary>
    MachineZone,
}
