namespace RideAudit.Report.Tests;

/// <summary>Where the sources lie.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    /// <summary>RIDEAUDIT_UPDATE=1 writes the committed pictures anew, to be looked at again.</summary>
    public static bool Updates => Environment.GetEnvironmentVariable("RIDEAUDIT_UPDATE") == "1";

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "RideAudit.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The tests run inside the repository.");
    }
}
