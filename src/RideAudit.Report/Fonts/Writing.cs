namespace RideAudit.Report.Fonts;

/// <summary>A script as a reader would name it, and what it takes to see it on a page.</summary>
/// <param name="IsSet">Whether this program can set it; false where letters join, move or run from right to left.</param>
/// <param name="Example">A font with TrueType outlines that has it; null when none is known.</param>
/// <remarks>Blocks of characters after the Unicode standard, from memory; fonts from memory.</remarks>
internal sealed record Writing(string Name, bool IsSet, string? Example = null)
{
    private static readonly Writing EastAsian = new("Chinese or Japanese", true, "IPAexGothic or WenQuanYi Zen Hei");
    private static readonly Writing Korean = new("Korean", true, "Nanum Gothic");
    private static readonly Writing Arabic = new("Arabic", false);
    private static readonly Writing Indic = new("Indic", false);
    private static readonly Writing Other = new("unknown character", true, "DejaVu Sans");

    private static readonly (int First, int Last, Writing Writing)[] Blocks =
    [
        (0x0590, 0x05FF, new Writing("Hebrew", false)), (0x0600, 0x06FF, Arabic), (0x0700, 0x074F, new Writing("Syriac", false)),
        (0x0750, 0x077F, Arabic), (0x0780, 0x08FF, new Writing("right-to-left", false)), (0x0900, 0x0DFF, Indic),
        (0x0E00, 0x0E7F, new Writing("Thai", false)), (0x0E80, 0x0EFF, new Writing("Lao", false)), (0x0F00, 0x0FFF, new Writing("Tibetan", false)),
        (0x1000, 0x109F, new Writing("Burmese", false)), (0x1100, 0x11FF, Korean), (0x1780, 0x17FF, new Writing("Khmer", false)),
        (0x2E80, 0x30FF, EastAsian), (0x3130, 0x318F, Korean), (0x3190, 0x9FFF, EastAsian), (0xAC00, 0xD7AF, Korean),
        (0xF900, 0xFAFF, EastAsian), (0xFB1D, 0xFB4F, new Writing("Hebrew", false)), (0xFB50, 0xFDFF, Arabic), (0xFE70, 0xFEFE, Arabic),
        (0xFF00, 0xFFEF, EastAsian), (0x10800, 0x10FFF, new Writing("right-to-left", false)), (0x1E800, 0x1EFFF, new Writing("right-to-left", false)),
        (0x1F000, 0x1FAFF, new Writing("emoji", true, "Noto Emoji")), (0x20000, 0x3FFFF, EastAsian),
    ];

    /// <summary>What to do about it, as a sentence.</summary>
    public string Advice
    {
        get
        {
            if (!IsSet)
                return $"Text in {Name} script is not set by this program: [{Name}] stands in its place.";
            var (place, remedy) = OperatingSystem.IsBrowser() ? ("this page", "drop the file of one with TrueType outlines here") : ("this system", "install one with TrueType outlines");
            return $"No font of {place} draws every character of what stands as [{Name}]: {remedy}{(Example is null ? "" : $", for example {Example}")}.";
        }
    }

    /// <summary>The script of a text element's first character.</summary>
    public static Writing Of(string element)
    {
        var code = element.EnumerateRunes().First().Value;
        foreach ((var first, var last, var writing) in Blocks)
        {
            if (code >= first && code <= last)
                return writing;
        }

        return Other;
    }
}
