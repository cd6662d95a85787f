namespace RideAudit.Cli.Output;

/// <summary>A kind of file that the program writes.</summary>
/// <param name="Ending">The ending of its names.</param>
/// <param name="Called">What it is called, with article.</param>
/// <param name="Start">How its content begins.</param>
/// <param name="Mark">What stands near its beginning or its end when this program wrote it; null: nothing does.</param>
internal sealed record OutputKind(string Ending, string Called, string Start, string? Mark)
{
    private const int LookedAt = 1 << 16;

    /// <summary>A review or an overview as pages.</summary>
    public static OutputKind Pdf { get; } = new(".pdf", "a PDF", "%PDF-", "RideAudit");

    /// <summary>A picture of page one, or the card.</summary>
    public static OutputKind Png { get; } = new(".png", "a picture", "\u0089PNG", null);

    /// <summary>A document.</summary>
    public static OutputKind Json { get; } = new(".json", "a JSON document", "{", "\"schema\": \"rideaudit-");

    /// <summary>A layout as a calendar.</summary>
    public static OutputKind Calendar { get; } = new(".ics", "a calendar", "BEGIN:VCALENDAR", "PRODID:-//RideAudit//");

    /// <summary>A plan table, which people go on writing themselves.</summary>
    public static OutputKind Plan { get; } = new(".csv", "a plan table", "", null);

    /// <summary>A rider file, which people go on writing themselves.</summary>
    public static OutputKind Rider { get; } = new(".toml", "a rider file", "", null);

    /// <summary>The browser page in one file.</summary>
    public static OutputKind Html { get; } = new(".html", "a page", "<!doctype html>", "RideAudit");

    /// <summary>The name ends as this kind's names do.</summary>
    public bool IsNameOf(string path) => Path.GetExtension(path).Equals(Ending, StringComparison.OrdinalIgnoreCase);

    /// <summary>A file of any name that this program wrote as this kind: it may be written again.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public bool Wrote(string path)
    {
        if (Mark is null)
            return false;
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var start = Read(stream, 0);
        return start.StartsWith(Start, StringComparison.Ordinal)
            && (start.Contains(Mark, StringComparison.Ordinal) || Read(stream, Math.Max(0, stream.Length - LookedAt)).Contains(Mark, StringComparison.Ordinal));
    }

    private static string Read(FileStream stream, long from)
    {
        var bytes = new byte[LookedAt];
        stream.Position = from;
        return System.Text.Encoding.Latin1.GetString(bytes, 0, stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false));
    }
}
