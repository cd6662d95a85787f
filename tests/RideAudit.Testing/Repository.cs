namespace RideAudit.Testing;

/// <summary>Finds files of the repository from wherever the tests run.</summary>
public static class Repository
{
    /// <summary>Set RIDEAUDIT_UPDATE=1 to write what generators make and programs print over the committed files, to be read before they are committed.</summary>
    public static bool Updates => Environment.GetEnvironmentVariable("RIDEAUDIT_UPDATE") == "1";

    public static string Root { get; } = Above("RideAudit.sln");

    /// <summary>The folder of the test project that runs.</summary>
    public static string TestProject { get; } = Above("*.csproj");

    public static string Demo => Path("testdata", "demo");

    public static string Path(params string[] parts) => System.IO.Path.Combine([Root, .. parts]);

    private static string Above(string file)
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (folder.EnumerateFiles(file).Any())
                return folder.FullName;
        throw new DirectoryNotFoundException($"No folder above the running tests holds {file}: they do not run inside the repository.");
    }
}
