namespace RideAudit.Report.Text;

/// <summary>Weights of the text face in use.</summary>
internal enum Weight
{
    Regular,
    SemiBold,
}
