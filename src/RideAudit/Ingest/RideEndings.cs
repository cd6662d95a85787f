namespace RideAudit.Ingest;

/// <summary>What a file's name promises. What the file is, its content says.</summary>
internal static class RideEndings
{
    private static readonly HashSet<string> Promising = new(StringComparer.OrdinalIgnoreCase)
    {
        ".fit", ".csv", ".tcx", ".gpx", ".zip", ".tar", ".tgz", ".7z", ".rar",
    };

    /// <summary>True when a file of this name that gives no ride is worth a notice.</summary>
    public static bool Promise(string name) => Promising.Contains(Of(name)) || IsBareGzip(name);

    public static bool IsCsv(string name) => Is(name, ".csv");

    public static bool IsFit(string name) => Is(name, ".fit");

    private static bool Is(string name, string ending) => Of(name).Equals(ending, StringComparison.OrdinalIgnoreCase);

    /// <summary>The ending with its dot, that of the packed file where the name ends in .gz; empty without one.</summary>
    private static string Of(string name)
    {
        var last = LastEnding(name);
        return last.Equals(".gz", StringComparison.OrdinalIgnoreCase) ? LastEnding(name[..^last.Length]) : last;
    }

    private static bool IsBareGzip(string name) =>
        LastEnding(name).Equals(".gz", StringComparison.OrdinalIgnoreCase) && Of(name).Length == 0;

    private static string LastEnding(string name)
    {
        var dot = name.LastIndexOf('.');
        return dot > name.LastIndexOf('/') ? name[dot..] : "";
    }
}
