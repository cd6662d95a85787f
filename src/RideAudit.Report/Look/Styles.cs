using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;

namespace RideAudit.Report.Look;

/// <summary>The text styles of the pages.</summary>
internal static class Styles
{
    /// <summary>Body, 9.5 pt.</summary>
    public static readonly TextStyle Body = new(Weight.Regular, 9.5f, Palette.Ink);

    /// <summary>Body in semi-bold.</summary>
    public static readonly TextStyle Strong = new(Weight.SemiBold, 9.5f, Palette.Ink);

    /// <summary>Body, secondary.</summary>
    public static readonly TextStyle Quiet = new(Weight.Regular, 9.5f, Palette.Quiet);

    /// <summary>Small print.</summary>
    public static readonly TextStyle Small = new(Weight.Regular, 8.5f, Palette.Quiet);

    /// <summary>Small print in surface.</summary>
    public static readonly TextStyle SmallInk = new(Weight.Regular, 8.5f, Palette.Ink);

    /// <summary>Small print, strong.</summary>
    public static readonly TextStyle SmallStrong = new(Weight.SemiBold, 8.5f, Palette.Ink);

    /// <summary>Footers and axis labels.</summary>
    public static readonly TextStyle Tiny = new(Weight.Regular, 7.5f, Palette.Quiet);

    /// <summary>Distance of a page number's baseline from the page's foot, pt: that of the last line of a footer.</summary>
    public static readonly float PageNumberBaseline = Tiny.Leading - Tiny.Ascent;

    /// <summary>A section's heading.</summary>
    public static readonly TextStyle Section = new(Weight.SemiBold, 16, Palette.Ink);

    /// <summary>A heading inside a section.</summary>
    public static readonly TextStyle Heading = new(Weight.SemiBold, 11, Palette.Ink);
}
