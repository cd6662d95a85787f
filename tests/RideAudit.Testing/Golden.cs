using Xunit;

namespace RideAudit.Testing;

/// <summary>Text approved by a reader and kept in the folder Golden of a test project. RIDEAUDIT_UPDATE=1 writes it anew, to be read again.</summary>
public static class Golden
{
    public static void Check(string name, string actual)
    {
        var path = Path.Combine(Repository.TestProject, "Golden", name);
        if (Repository.Updates)
            File.WriteAllText(path, actual);
        Assert.True(File.Exists(path), $"There is no golden text {name}: run once with RIDEAUDIT_UPDATE=1 and read it.");
        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), actual);
    }
}
