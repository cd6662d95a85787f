namespace RideAudit.Ingest.Tracks;

/// <summary>What a sample can hold.</summary>
internal enum SampleChannel
{
    Power,
    HeartRate,
    Cadence,
    Speed,
    Distance,
}
