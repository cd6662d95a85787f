namespace RideAudit.Report.Fonts;

/// <summary>Weights of the text face in use.</summary>
internal enum Weight
{
    Regular,
    SemiBold,
}
