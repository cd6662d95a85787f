namespace RideAudit.Cli.Tests.Support;

/// <summary>Text approved by a reader and kept beside the tests. RIDEAUDIT_UPDATE=1 writes it anew, to be read again.</summary>
internal static class Golden
{
    public static bool Updates => Environment.GetEnvironmentVariable("RIDEAUDIT_UPDATE") == "1";

    public static void Check(string name, string actual)
    {
        var path = Path.Combine(Repository.TestProject, "Golden", name);
        if (Updates)
            File.WriteAllText(path, actual);
        Assert.True(File.Exists(path), $"There is no golden text {name}: run once with RIDEAUDIT_UPDATE=1 and read it.");
        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), actual);
    }
}
