using RideAudit.Report.Fonts;

namespace RideAudit.Report.Tests.Samples;

/// <summary>A machine with one font on it, whose characters all look like an M: what is tested is which are found, set and embedded.</summary>
internal static class MadeFont
{
    /// <summary>The font file.</summary>
    public static byte[] Bytes(string characters)
    {
        var inter = FontSet.Inter(Weight.Regular);
        return inter.Cut([.. characters.EnumerateRunes().Select(rune => (inter.Glyph('M'), rune.Value))]);
    }

    /// <summary>Inter, and a font of the machine that has exactly these characters.</summary>
    public static FontSet With(string characters)
    {
        var folder = Directory.CreateTempSubdirectory("made-font").FullName;
        try
        {
            File.WriteAllBytes(Path.Combine(folder, "made.ttf"), Bytes(characters));
            var fonts = new FontSet(new SystemFonts([folder]));
            fonts.Lacking([characters]).ToList();
            return fonts;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
