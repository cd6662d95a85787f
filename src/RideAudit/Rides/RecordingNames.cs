namespace RideAudit.Rides;

/// <summary>Compares the names of recordings with what people write for them.</summary>
internal static class RecordingNames
{
    /// <summary>True when a recording is meant: its whole name, or the last part of it, with or without endings. Capitals do not matter.</summary>
    /// <param name="file">The recording's name, such as <c>2026/may/wed.fit</c>.</param>
    /// <param name="written">What is written, such as <c>wed.fit</c> or <c>wed</c>.</param>
    public static bool Match(string file, string written)
    {
        bool Is(string name) => name.Equals(written, StringComparison.OrdinalIgnoreCase);
        var last = file[(file.LastIndexOf('/') + 1)..];
        var dot = last.IndexOf('.', StringComparison.Ordinal);
        return Is(file) || Is(last) || (dot > 0 && Is(last[..dot]));
    }
}
