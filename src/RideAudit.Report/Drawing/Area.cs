namespace RideAudit.Report.Drawing;

/// <summary>An upright rectangle on a page, pt from its top left corner.</summary>
internal readonly record struct Area(float Left, float Top, float Right, float Bottom)
{
    public float Width => Right - Left;

    public float Height => Bottom - Top;
}
