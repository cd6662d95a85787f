namespace RideAudit.Tests.Support;

/// <summary>Finds files of the repository from wherever the tests run.</summary>
internal static class Repository
{
    /// <summary>Set RIDEAUDIT_UPDATE=1 to write what generators make and programs print over the committed files.</summary>
    public static bool Updates => Environment.GetEnvironmentVariable("RIDEAUDIT_UPDATE") == "1";

    public static string Root { get; } = Find();

    public static string Path(params string[] parts) => System.IO.Path.Combine([Root, .. parts]);

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(System.IO.Path.Combine(folder.FullName, "RideAudit.sln")))
                return folder.FullName;
        throw new DirectoryNotFoundException("The tests do not run inside the repository.");
    }
}
