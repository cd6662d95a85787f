namespace RideAudit.Cli.Tests.Support;

/// <summary>Where the sources lie.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    public static string TestProject => Path.Combine(Root, "tests", "RideAudit.Cli.Tests");

    public static string Demo => Path.Combine(Root, "testdata", "demo");

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "RideAudit.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The tests run inside the repository.");
    }
}
