namespace RideAudit.Ingest.Archives;

/// <summary>How unpacking went.</summary>
internal enum UnpackOutcome
{
    Whole,
    Damaged,
    TooLarge,
}
