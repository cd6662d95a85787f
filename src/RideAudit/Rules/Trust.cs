namespace RideAudit.Rules;

/// <summary>How far the threshold power behind some rides can be trusted; the largest of several counts.</summary>
internal enum Trust
{
    Sound,
    Estimate,
    Thin,
}
