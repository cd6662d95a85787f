using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace RideAudit.Report.Pdf;

/// <summary>The numbered objects of a PDF and the file made of them, as ISO 32000-1 describes it.</summary>
internal sealed class PdfObjects
{
    private const int IdentifierLength = 16;
    private readonly List<byte[]> _objects = [];

    /// <summary>Takes a number for an object that is written later.</summary>
    public int Reserve()
    {
        _objects.Add([]);
        return _objects.Count;
    }

    /// <summary>Adds an object and returns its number.</summary>
    public int Add(string content)
    {
        var number = Reserve();
        Set(number, content);
        return number;
    }

    /// <summary>Writes a reserved object.</summary>
    public void Set(int number, string content) => _objects[number - 1] = Encoding.Latin1.GetBytes(content);

    /// <summary>Adds a compressed stream and returns its number.</summary>
    /// <param name="data">What is compressed.</param>
    /// <param name="entries">Entries of its dictionary besides filter and length.</param>
    public int AddStream(ReadOnlySpan<byte> data, string entries = "")
    {
        var packed = Deflate.Compress(data);
        var head = $"<</Filter/FlateDecode/Length {Whole(packed.Length)}{entries}>>\nstream\n";
        _objects.Add([.. Encoding.Latin1.GetBytes(head), .. packed, .. "\nendstream"u8]);
        return _objects.Count;
    }

    /// <summary>A text of the document, not of a page.</summary>
    public static string Text(string text) => $"<FEFF{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text))}>";

    /// <summary>A whole number.</summary>
    public static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A reference to an object.</summary>
    public static string To(int number) => $"{Whole(number)} 0 R";

    /// <summary>The file; its identifier comes from its content.</summary>
    /// <param name="catalog">Number of the catalog.</param>
    /// <param name="information">Number of the information dictionary.</param>
    public byte[] File(int catalog, int information)
    {
        using var file = new MemoryStream();
        file.Write("%PDF-1.7\n%\u00E2\u00E3\u00CF\u00D3\n"u8);
        var table = new StringBuilder($"xref\n0 {Whole(_objects.Count + 1)}\n0000000000 65535 f \n");
        for (var i = 0; i < _objects.Count; i++)
        {
            table.Append(CultureInfo.InvariantCulture, $"{file.Length:0000000000} 00000 n \n");
            file.Write(Encoding.Latin1.GetBytes($"{Whole(i + 1)} 0 obj\n"));
            file.Write(_objects[i]);
            file.Write("\nendobj\n"u8);
        }

        var identifier = Convert.ToHexString(SHA256.HashData(file.ToArray()).AsSpan(0, IdentifierLength));
        var start = file.Length.ToString(CultureInfo.InvariantCulture);
        file.Write(Encoding.Latin1.GetBytes(
            $"{table}trailer\n<</Size {Whole(_objects.Count + 1)}/Root {To(catalog)}/Info {To(information)}/ID [<{identifier}> <{identifier}>]>>\nstartxref\n{start}\n%%EOF\n"));
        return file.ToArray();
    }
}
