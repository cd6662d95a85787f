namespace RideAudit.Tests;

/// <summary>Where the repository's own files are, from wherever the tests run.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    public static string PathOf(params string[] parts) => Path.Combine([Root, .. parts]);

    private static string FindRoot()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "RideAudit.sln")))
            folder = Path.GetDirectoryName(folder) ?? throw new DirectoryNotFoundException("RideAudit.sln is in no folder above the tests.");
        return folder;
    }
}
