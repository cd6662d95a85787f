using System.Text;
using NodaTime;
using NodaTime.Text;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Units;

namespace RideAudit.Report.Pdf;

/// <summary>Makes a PDF of pages: text as text, fonts embedded and cut down, lines as vectors, links, outline, language, metadata, and a structure tree.</summary>
/// <remarks>The same pages give the same bytes on every system: nothing of the machine is in them. Not PDF/A and not PDF/UA.</remarks>
internal sealed class PdfMaker
{
    private const string Language = "en-GB";
    private const string Producer = "RideAudit";

    // A day has no time of day and no offset: the specification (ISO 32000-1, 7.9.4) allows both to be left out.
    private static readonly LocalDatePattern Day = LocalDatePattern.CreateWithInvariantCulture("'D:'uuuuMMdd");
    private readonly PdfObjects _objects = new();
    private readonly PdfStructure _structure;
    private readonly Dictionary<Face, PdfFont> _fonts = [];
    private readonly SortedDictionary<string, string> _places = new(StringComparer.Ordinal);

    private PdfMaker() => _structure = new PdfStructure(_objects);

    /// <summary>The file.</summary>
    /// <param name="set">Their fonts.</param>
    /// <param name="title">The document's title.</param>
    /// <param name="date">The day it is of.</param>
    public static byte[] Make(IPages pages, FontSet set, string title, string subject, LocalDate date)
    {
        var maker = new PdfMaker();
        int resources = maker._objects.Reserve(), tree = maker._objects.Reserve();
        int[] leaves = [.. Enumerable.Range(0, pages.Count).Select(page => maker.AddPage(pages, page, set, tree, resources))];
        var kids = string.Join(' ', leaves.Select(PdfObjects.To));
        maker._objects.Set(tree, $"<</Type/Pages/Count {PdfObjects.Whole(leaves.Length)}/Kids [{kids}]>>");
        var cutting = Phase.Begin("cutting fonts");
        var used = string.Concat(maker._fonts.Values.Select(font => $"/{font.Resource} {PdfObjects.To(font.Write(maker._objects))}"));
        cutting?.Dispose();
        maker._objects.Set(resources, $"<</Font <<{used}>>>>");
        var day = Day.Format(date);
        var information = maker._objects.Add(
            $"<</Title {Line(title)}/Subject {Line(subject)}/Creator ({Producer})/Producer ({Producer})/CreationDate ({day})/ModDate ({day})>>");
        return maker._objects.File(maker.AddCatalog(tree, [.. pages.Outline]), information);
    }

    // A no-break space holds lines of a page together; here it would only keep a search from finding what it stands in.
    private static string Line(string text) => PdfObjects.Text(PlainText.Of(text, ' ').Replace('\u00A0', ' '));

    private int AddPage(IPages pages, int index, FontSet set, int tree, int resources)
    {
        var page = new PdfPage(set, pages.Sheet.Height, Embedded);
        using (Phase.Begin("drawing"))
            pages.Draw(index, page);
        var packing = Phase.Begin("packing pages");
        var content = _objects.AddStream(Encoding.Latin1.GetBytes(page.Content));
        packing?.Dispose();
        var links = page.Links.Count == 0 ? "" : $"/Annots [{string.Join('\n', page.Links)}]";
        var leaf = _objects.Reserve();
        _objects.Set(
            leaf,
            $"<</Type/Page/Parent {PdfObjects.To(tree)}/MediaBox [0 0 {Numerals.Plain(pages.Sheet.Width)} {Numerals.Plain(pages.Sheet.Height)}]"
            + $"/Resources {PdfObjects.To(resources)}/Contents {PdfObjects.To(content)}{links}{_structure.Add(leaf, page.Parts)}>>");
        foreach ((var name, var x, var y) in page.Places)
            _places[name] = $"[{PdfObjects.To(leaf)}/XYZ {Numerals.Plain(x)} {Numerals.Plain(y)} 0]";
        return leaf;
    }

    private PdfFont Embedded(Face face)
    {
        if (!_fonts.TryGetValue(face, out var font))
            _fonts[face] = font = new PdfFont(face, "F" + PdfObjects.Whole(_fonts.Count + 1));
        return font;
    }

    private int AddCatalog(int tree, OutlineLine[] outline)
    {
        var destinations = _objects.Add($"<<{string.Concat(_places.Select(place => $"/{place.Key} {place.Value}\n"))}>>");
        var shown = outline.Length == 0 ? "" : $"/Outlines {PdfObjects.To(AddOutline(outline))}/PageMode/UseNone";
        return _objects.Add(
            $"<</Type/Catalog/Pages {PdfObjects.To(tree)}/Dests {PdfObjects.To(destinations)}/Lang ({Language})/ViewerPreferences <</DisplayDocTitle true>>{_structure.Finish()}{shown}>>");
    }

    private int AddOutline(OutlineLine[] outline)
    {
        var root = _objects.Reserve();
        _objects.Set(root, $"<</Type/Outlines/First {PdfObjects.To(root + 1)}/Last {PdfObjects.To(root + outline.Length)}/Count {PdfObjects.Whole(outline.Length)}>>");
        for (var i = 0; i < outline.Length; i++)
        {
            var before = i > 0 ? $"/Prev {PdfObjects.To(root + i)}" : "";
            var after = i + 1 < outline.Length ? $"/Next {PdfObjects.To(root + i + 2)}" : "";
            _objects.Add($"<</Title {Line(outline[i].Title)}/Parent {PdfObjects.To(root)}{before}{after}/Dest/{outline[i].Place}>>");
        }

        return root;
    }
}
