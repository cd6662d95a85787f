namespace RideAudit.Cli.Tests.Support;

/// <summary>A folder of its own that goes away with the test.</summary>
internal sealed class TempFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("rideaudit-test-").FullName;

    public string At(string relative) => System.IO.Path.Combine(Path, relative);

    public string Write(string relative, string text)
    {
        var path = At(relative);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public string[] Names() => [.. Directory.EnumerateFileSystemEntries(Path, "*", SearchOption.AllDirectories)
        .Select(p => System.IO.Path.GetRelativePath(Path, p)).Order(StringComparer.Ordinal)];

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
