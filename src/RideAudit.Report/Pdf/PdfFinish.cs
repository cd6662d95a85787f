using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using RideAudit.Report.Flow;

namespace RideAudit.Report.Pdf;

/// <summary>Adds to a drawn PDF what the drawing library has no means for: language, outline, and an identifier made from the content.</summary>
/// <remarks>
/// An incremental update as ISO 32000-1, 7.5.6 describes it: the drawn bytes stay as they are, and a new catalog, the outline's
/// objects, a cross-reference section and a trailer follow. The file is not PDF/A and carries no structure tree.
/// </remarks>
internal static class PdfFinish
{
    private const string Language = "en-GB";
    private const int IdentifierLength = 16;

    /// <summary>The finished file.</summary>
    /// <param name="drawn">As the library drew it.</param>
    /// <param name="outline">Lines of the outline; their places are named destinations of the file.</param>
    /// <exception cref="InvalidDataException">The file's trailer or catalog is not laid out as the library lays it out.</exception>
    public static byte[] Apply(byte[] drawn, IReadOnlyList<OutlineLine> outline)
    {
        string text = Encoding.Latin1.GetString(drawn);
        int trailer = text.LastIndexOf("trailer", StringComparison.Ordinal);
        int size = Number(text, "/Size ", trailer), root = Number(text, "/Root ", trailer), info = Number(text, "/Info ", trailer);
        int before = Number(text, "startxref\n", trailer);
        var objects = new SortedDictionary<int, string> { [root] = Catalog(text, root, outline.Count > 0 ? size : null) };
        AddOutline(objects, outline, size);
        string identifier = Convert.ToHexString(SHA256.HashData(drawn).AsSpan(0, IdentifierLength));
        string tail = $"/Root {root} 0 R\n/Info {info} 0 R\n/Prev {before}\n/ID [<{identifier}> <{identifier}>]>>";
        return [.. drawn, .. Encoding.Latin1.GetBytes(Update(objects, drawn.Length, Math.Max(size, objects.Keys.Max() + 1), tail))];
    }

    private static int Number(string text, string key, int from)
    {
        int at = from < 0 ? -1 : text.IndexOf(key, from, StringComparison.Ordinal);
        if (at < 0)
            throw new InvalidDataException($"The drawn PDF has no {key.Trim()} in its trailer.");
        int end = at + key.Length;
        while (end < text.Length && char.IsAsciiDigit(text[end]))
            end++;
        return int.Parse(text.AsSpan(at + key.Length, end - at - key.Length), NumberStyles.None, CultureInfo.InvariantCulture);
    }

    private static string Catalog(string text, int root, int? outlines)
    {
        string head = $"\n{root} 0 obj\n<<";
        int start = text.LastIndexOf(head, StringComparison.Ordinal);
        int end = start < 0 ? -1 : text.IndexOf(">>\nendobj", start, StringComparison.Ordinal);
        if (end < 0)
            throw new InvalidDataException("The drawn PDF's catalog was not found.");
        string entries = text[(start + head.Length)..end];
        string shown = outlines is { } number ? $"\n/Outlines {number} 0 R\n/PageMode /UseNone" : "";
        return $"<<{entries}\n/Lang ({Language}){shown}>>";
    }

    private static void AddOutline(SortedDictionary<int, string> objects, IReadOnlyList<OutlineLine> outline, int first)
    {
        if (outline.Count == 0)
            return;
        objects[first] = $"<</Type /Outlines\n/First {first + 1} 0 R\n/Last {first + outline.Count} 0 R\n/Count {outline.Count}>>";
        for (int i = 0; i < outline.Count; i++)
        {
            string previous = i > 0 ? $"\n/Prev {first + i} 0 R" : "";
            string next = i + 1 < outline.Count ? $"\n/Next {first + i + 2} 0 R" : "";
            objects[first + 1 + i] = $"<</Title {TextString(outline[i].Title)}\n/Parent {first} 0 R{previous}{next}\n/Dest /{outline[i].Place}>>";
        }
    }

    private static string TextString(string text) => $"<FEFF{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text))}>";

    private static string Update(SortedDictionary<int, string> objects, int start, int size, string tail)
    {
        var body = new StringBuilder("\n");
        var table = new StringBuilder("xref\n");
        foreach ((int number, string content) in objects)
        {
            table.Append(CultureInfo.InvariantCulture, $"{number} 1\n{start + body.Length:0000000000} 00000 n \n");
            body.Append(CultureInfo.InvariantCulture, $"{number} 0 obj\n{content}\nendobj\n");
        }

        int at = start + body.Length;
        return $"{body}{table}trailer\n<</Size {size}\n{tail}\nstartxref\n{at}\n%%EOF\n";
    }
}
