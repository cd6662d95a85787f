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

    /// <summary>One of the sections that a text is kept in, each after a line of its own, <c># section</c>, in the order of their names.</summary>
    public static void Check(string name, string section, string actual)
    {
        var path = Path.Combine(Repository.TestProject, "Golden", name);
        var sections = File.Exists(path) ? Sections(File.ReadAllText(path).ReplaceLineEndings("\n")) : [];
        if (Repository.Updates)
        {
            sections[section] = actual;
            File.WriteAllText(path, string.Join('\n', sections.Select(s => $"# {s.Key}\n{s.Value}")));
        }
        Assert.True(sections.ContainsKey(section), $"The golden text {name} has no section {section}: run once with RIDEAUDIT_UPDATE=1 and read it.");
        Assert.Equal(sections[section], actual);
    }

    private static SortedDictionary<string, string> Sections(string text) => new(
        $"\n{text}".Split("\n# ").Skip(1).Select(s => s.Split('\n', 2)).ToDictionary(s => s[0], s => s[1].TrimEnd('\n') + "\n"),
        StringComparer.Ordinal);
}
