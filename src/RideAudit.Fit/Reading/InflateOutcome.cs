namespace RideAudit.Fit.Reading;

/// <summary>What came of inflating.</summary>
internal enum InflateOutcome
{
    Inflated,
    Damaged,
    TooLarge,
}
