namespace RideAudit.Testing;

/// <summary>A folder of its own that goes away with the test.</summary>
public sealed class TempFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("rideaudit-test-").FullName;

    public string At(string relative) => System.IO.Path.Combine(Path, relative);

    public TempFolder Write(string relative, byte[] bytes)
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(At(relative))!);
        File.WriteAllBytes(At(relative), bytes);
        return this;
    }

    public TempFolder Write(string relative, string text) => Write(relative, System.Text.Encoding.UTF8.GetBytes(text));

    /// <summary>Everything in it, relative to it, folders among them.</summary>
    public string[] Names() => [.. Directory.EnumerateFileSystemEntries(Path, "*", SearchOption.AllDirectories)
        .Select(p => System.IO.Path.GetRelativePath(Path, p)).Order(StringComparer.Ordinal)];

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
