using RideAudit.Ingest.Text;
using RideAudit.Plan.Table;

namespace RideAudit.Ingest;

/// <summary>Reads one plan table from its bytes, as it must be read to be written again.</summary>
public static class PlanFile
{
    /// <summary>The table; null when the file is none.</summary>
    /// <remarks>One in another encoding than UTF-8 will be written as UTF-8 with a byte-order mark, which spreadsheets know it by.</remarks>
    /// <param name="bytes">All of the file.</param>
    /// <param name="name">Its name, for messages.</param>
    public static PlanSheet? Read(byte[] bytes, string name)
    {
        var text = TextBytes.Reader(bytes).ReadToEnd();
        if (!PlanTableReader.IsPlan(FirstLine(text)))
            return null;
        return PlanTableReader.Read(text, name) with { ByteOrderMark = !TextBytes.IsPlainUtf8(bytes) };
    }

    private static string FirstLine(string text) => text.AsSpan().IndexOfAny('\r', '\n') is >= 0 and var end ? text[..end] : text;
}
