using System.Xml;
using RideAudit.Ingest.Text;

namespace RideAudit.Ingest.Xml;

/// <summary>Opens XML without ever looking outside the file: no document type, no entities, no other files.</summary>
internal static class XmlSource
{
    private static readonly XmlReaderSettings Settings = new()
    {
        DtdProcessing = DtdProcessing.Prohibit,
        XmlResolver = null,
        IgnoreComments = true,
        IgnoreProcessingInstructions = true,
        IgnoreWhitespace = true,
        CheckCharacters = false,
        CloseInput = true,
    };

    public static XmlReader Open(byte[] bytes) => XmlReader.Create(TextBytes.Reader(bytes), Settings);
}
