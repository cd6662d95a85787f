using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;

namespace RideAudit.Report.Pdf;

/// <summary>A font as a PDF embeds it: cut down to what was drawn, each character under a number of its own.</summary>
/// <param name="face">The font.</param>
/// <param name="resource">The name that pages call it by.</param>
internal sealed class PdfFont(Face face, string resource)
{
    private const int TagLength = 6;
    private const int MostMappings = 100;
    private readonly FontUse _use = new(face);

    /// <summary>The name that pages call it by.</summary>
    public string Resource => resource;

    /// <summary>The number that a character of a page is written as.</summary>
    public int Number(GlyphRun.Glyph glyph) => _use.Number(glyph);

    /// <summary>A glyph's advance, thousandths of the size, as the file states it.</summary>
    public double Advance(int glyph) => Math.Round(Thousandths(face.Advance(glyph)), 2);

    /// <summary>Adds the font's objects and returns the number of the font.</summary>
    public int Write(PdfObjects objects)
    {
        var cut = _use.Cut();
        var name = $"{Tag(cut)}+{face.Name}";
        var file = objects.AddStream(cut, $"/Length1 {PdfObjects.Whole(cut.Length)}");
        var box = string.Join(' ', face.Box.Select(side => Numerals.Plain(Thousandths(side))));
        var descriptor = objects.Add(
            $"<</Type/FontDescriptor/FontName/{name}/Flags 4/FontBBox [{box}]/ItalicAngle 0/Ascent {Numerals.Plain(Thousandths(face.Ascent))}"
            + $"/Descent {Numerals.Plain(Thousandths(face.Descent))}/CapHeight {Numerals.Plain(Thousandths(face.Ascent))}/StemV 80/FontFile2 {PdfObjects.To(file)}>>");
        var widths = string.Join(' ', _use.Drawn.Select(entry => Numerals.Plain(Advance(entry.Glyph))));
        var descendant = objects.Add(
            $"<</Type/Font/Subtype/CIDFontType2/BaseFont/{name}/CIDSystemInfo <</Registry (Adobe)/Ordering (Identity)/Supplement 0>>"
            + $"/FontDescriptor {PdfObjects.To(descriptor)}/CIDToGIDMap/Identity/W [1 [{widths}]]>>");
        var map = objects.AddStream(Encoding.ASCII.GetBytes(CharacterMap()));
        return objects.Add(
            $"<</Type/Font/Subtype/Type0/BaseFont/{name}/Encoding/Identity-H/DescendantFonts [{PdfObjects.To(descendant)}]/ToUnicode {PdfObjects.To(map)}>>");
    }

    // Six letters before the name of a font that is not whole, different for different cuts: ISO 32000-1, 9.6.4.
    private static string Tag(byte[] cut) =>
        string.Concat(SHA256.HashData(cut).Take(TagLength).Select(value => (char)('A' + (value % 26))));

    // What is copied off a page must not turn the reading direction where it is put.
    private static string Copied(int codePoint) => PlainText.Of(new Rune(codePoint).ToString(), '\uFFFD');

    private double Thousandths(int units) => units * 1000.0 / face.UnitsPerEm;

    private string CharacterMap()
    {
        var map = new StringBuilder("/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n");
        map.Append("/CIDSystemInfo <</Registry (Adobe) /Ordering (UCS) /Supplement 0>> def\n/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n");
        map.Append("1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n");
        for (var from = 0; from < _use.Drawn.Count; from += MostMappings)
        {
            var to = Math.Min(from + MostMappings, _use.Drawn.Count);
            map.Append(CultureInfo.InvariantCulture, $"{to - from} beginbfchar\n");
            for (var i = from; i < to; i++)
            {
                var unicode = Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(Copied(_use.Drawn[i].CodePoint)));
                map.Append(CultureInfo.InvariantCulture, $"<{i + 1:X4}> <{unicode}>\n");
            }

            map.Append("endbfchar\n");
        }

        return map.Append("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n").ToString();
    }
}
