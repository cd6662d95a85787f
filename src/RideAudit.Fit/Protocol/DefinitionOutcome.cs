namespace RideAudit.Fit.Protocol;

/// <summary>What came of reading a definition message.</summary>
internal enum DefinitionOutcome
{
    Read,
    DoesNotFit,
    Corrupt,
}
