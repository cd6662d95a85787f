namespace RideAudit.Ingest.Tracks;

/// <summary>What is said of power that is not used, or not as it is stored.</summary>
internal static class PowerRemarks
{
    public const string EBike = "E-bike: its power is not the rider’s alone and is not used.";
    public const string AllZero = "Power is 0 throughout: no sensor, not a measurement.";
    public const string Developer = "Power comes from an added data field of the recording.";
    public const string DeveloperInGaps = "Where the recording has no power of its own, that of an added data field is used.";
}
