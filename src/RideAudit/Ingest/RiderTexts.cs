namespace RideAudit.Ingest;

/// <summary>Knows the texts that lie beside rides by their names: the rider file and notes.</summary>
internal static class RiderTexts
{
    public const string RiderFile = "rider.toml";

    /// <summary>More than this nobody writes by hand, bytes.</summary>
    public const int LargestBytes = 1 << 20;

    public static bool Are(string name) => IsRiderFile(name) || IsNote(name);

    public static bool IsRiderFile(string name) => Last(name) == RiderFile;

    /// <summary><c>note.md</c>, and notes with a date such as <c>note-2026-06-08.md</c>.</summary>
    public static bool IsNote(string name)
    {
        var last = Last(name);
        return last.StartsWith("note", StringComparison.Ordinal) && last.EndsWith(".md", StringComparison.Ordinal);
    }

    private static string Last(string name) => name[(name.LastIndexOf('/') + 1)..];
}
