namespace RideAudit.Ingest.Csv;

/// <summary>What a CSV column holds.</summary>
internal enum CsvChannel
{
    Time,
    Power,
    HeartRate,
    Cadence,
    Speed,
    Altitude,
    Distance,
    Date,
    Start,
    Minutes,
    AveragePower,
    NormalisedPower,
    AverageHeartRate,
    Rating,
    Note,
}
