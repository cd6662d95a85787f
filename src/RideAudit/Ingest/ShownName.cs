using RideAudit.Formatting;

namespace RideAudit.Ingest;

/// <summary>Makes names from disks and archives fit to be shown: any script, but nothing that moves a cursor or turns the reading direction.</summary>
internal static class ShownName
{
    /// <summary>One name of a file or folder.</summary>
    public static string Of(string name) => PlainText.Of(name, '\uFFFD');

    /// <summary>The path of an entry of an archive: with <c>/</c>, without steps that lead nowhere.</summary>
    public static string OfEntry(string path) =>
        string.Join('/', path.Replace('\\', '/').Split('/').Where(part => part is not ("" or "." or "..")).Select(Of));

    /// <summary>What systems leave beside files: names that begin with a dot, also of a folder above, and a Mac's resource folder.</summary>
    /// <param name="shown">A path with <c>/</c>.</param>
    public static bool IsClutter(string shown)
    {
        var parts = shown.Split('/');
        return Array.Exists(parts, p => p.StartsWith('.')) || parts[0] == "__MACOSX";
    }
}
