using System.Text;
using RideAudit.Report.Drawing;

namespace RideAudit.Report.Pdf;

/// <summary>The structure tree of a PDF (ISO 32000-1, 14.7): headings, paragraphs and figures with their text, in the order in which they are read.</summary>
/// <remarks>Tables are paragraphs, a row each, and links are not in the tree: the file is tagged, and it is not PDF/UA.</remarks>
/// <param name="objects">The file's objects.</param>
internal sealed class PdfStructure(PdfObjects objects)
{
    private readonly List<int> _elements = [];
    private readonly StringBuilder _parents = new();
    private int _pages;

    private int Root { get; } = objects.Reserve();

    private int Document { get; } = objects.Reserve();

    /// <summary>The standard type of a part.</summary>
    public static string Role(Tag tag) => tag switch { Tag.Title => "H1", Tag.Heading => "H2", Tag.Figure => "Figure", _ => "P" };

    /// <summary>Adds a page's parts; returns what its dictionary must say.</summary>
    /// <param name="leaf">Number of the page's dictionary.</param>
    /// <param name="parts">The parts in order.</param>
    public string Add(int leaf, IReadOnlyList<(Tag Tag, string? Alternative)> parts)
    {
        var elements = parts.Select((part, place) => objects.Add(
            $"<</Type/StructElem/S/{Role(part.Tag)}/P {PdfObjects.To(Document)}/Pg {PdfObjects.To(leaf)}/K {PdfObjects.Whole(place)}{Alternative(part.Alternative)}>>")).ToArray();
        _elements.AddRange(elements);
        _parents.Append($"{PdfObjects.Whole(_pages)} [{string.Join(' ', elements.Select(PdfObjects.To))}]\n");
        return $"/StructParents {PdfObjects.Whole(_pages++)}/Tabs/S";
    }

    /// <summary>Writes the tree; returns what the catalog must say.</summary>
    public string Finish()
    {
        objects.Set(Document, $"<</Type/StructElem/S/Document/P {PdfObjects.To(Root)}/K [{string.Join(' ', _elements.Select(PdfObjects.To))}]>>");
        objects.Set(Root, $"<</Type/StructTreeRoot/K {PdfObjects.To(Document)}/ParentTree <</Nums [{_parents}]>>/ParentTreeNextKey {PdfObjects.Whole(_pages)}>>");
        return $"/MarkInfo <</Marked true>>/StructTreeRoot {PdfObjects.To(Root)}";
    }

    // A no-break space holds lines of a page together; read aloud it is a space.
    private static string Alternative(string? text) => text is null ? "" : $"/Alt {PdfObjects.Text(text.Replace('\u00A0', ' '))}";
}
