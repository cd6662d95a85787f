namespace RideAudit.Ingest.Csv;

/// <summary>What a CSV column holds.</summary>
internal enum CsvChannel
{
    Time,
    Power,
    HeartRate,
    Cadence,
    Speed,
    Distance,
    Altitude,
    Date,
    Start,
    Minutes,
    AveragePower,
    NormalisedPower,
    AverageHeartRate,
    Rating,
    Kind,
    RideFile,
    Note,
}
