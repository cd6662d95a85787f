using RideAudit.Report.Fonts;

namespace RideAudit.Report;

/// <summary>Fonts that somebody gives, for characters that Inter lacks: a page in a browser may not look at those that are installed.</summary>
public static class GivenFonts
{
    /// <summary>Takes a font file, for every page drawn from now on.</summary>
    /// <param name="bytes">The file: TrueType outlines, alone or in a collection, whose first font is taken.</param>
    /// <returns>False when it is no such font.</returns>
    public static bool Add(byte[] bytes)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        return SystemFonts.OfThisMachine.Add(bytes);
    }
}
