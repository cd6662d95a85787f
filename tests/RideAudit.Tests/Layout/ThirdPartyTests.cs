using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace RideAudit.Tests.Layout;

/// <summary>THIRD-PARTY.md against the program's lock file, Directory.Packages.props and what the restored packages say of themselves.</summary>
public sealed partial class ThirdPartyTests
{
    // The program embeds this package's fonts as data; its lock file rightly does not list it.
    private const string FontPackage = "Avalonia.Fonts.Inter";

    // Comes with the SDK and works at build time.
    private const string SdkPackage = "Microsoft.NET.ILLink.Tasks";

    private static readonly Dictionary<string, string> Pinned = XDocument.Load(Repository.Path("Directory.Packages.props"))
        .Descendants("PackageVersion").ToDictionary(p => p.Attribute("Include")!.Value, p => p.Attribute("Version")!.Value);

    private static readonly Dictionary<string, string> InTheProgram = Locked();

    [Fact]
    public void The_program_s_packages_are_listed_with_their_versions() =>
        Assert.Equal(Lines(InTheProgram), Listed("In the program").Select(p => $"{p.Name} {p.Version}"));

    [Fact]
    public void All_other_packages_are_listed_with_their_versions() =>
        Assert.Equal(
            Lines(Pinned.Where(p => !InTheProgram.ContainsKey(p.Key))),
            Listed("In the build, the tests and the benchmarks only").Select(p => $"{p.Name} {p.Version}"));

    [Fact]
    public void Every_licence_is_the_one_that_the_package_states()
    {
        var listed = Listed("In the program").Concat(Listed("In the build, the tests and the benchmarks only")).ToArray();
        Assert.NotEmpty(listed);
        Assert.All(listed, p => Assert.Equal(p.Licence, LicenceOf(p.Name, p.Version)));
    }

    private static Dictionary<string, string> Locked()
    {
        using var json = JsonDocument.Parse(File.ReadAllText(Repository.Path("src", "RideAudit.Cli", "packages.lock.json")));
        var locked = json.RootElement.GetProperty("dependencies").GetProperty("net10.0").EnumerateObject()
            .Where(p => p.Value.GetProperty("type").GetString() != "Project" && p.Name != SdkPackage)
            .ToDictionary(p => p.Name, p => p.Value.GetProperty("resolved").GetString()!);
        locked[FontPackage] = Pinned[FontPackage];
        return locked;
    }

    private static IEnumerable<string> Lines(IEnumerable<KeyValuePair<string, string>> packages) =>
        packages.OrderBy(p => p.Key, StringComparer.OrdinalIgnoreCase).Select(p => $"{p.Key} {p.Value}");

    private static IEnumerable<(string Name, string Version, string Licence)> Listed(string heading) =>
        File.ReadAllLines(Repository.Path("THIRD-PARTY.md")).SkipWhile(l => l != "## " + heading).Skip(1).TakeWhile(l => !l.StartsWith("## ", StringComparison.Ordinal))
            .Select(l => Row().Match(l)).Where(m => m.Success).Select(m => (m.Groups[1].Value, m.Groups[2].Value, m.Groups[3].Value));

    private static string LicenceOf(string name, string version)
    {
        var id = name.ToLowerInvariant();
        var description = PackageFolders().Select(f => Path.Combine(f, id, version, id + ".nuspec")).FirstOrDefault(File.Exists);
        Assert.True(description is not null, $"{name} {version} is not restored: restore RideAudit.sln first.");
        return XDocument.Load(description).Descendants().First(e => e.Name.LocalName == "license").Value;
    }

    private static string[] PackageFolders()
    {
        using var json = JsonDocument.Parse(File.ReadAllText(Path.Combine(Repository.TestProject, "obj", "project.assets.json")));
        return [.. json.RootElement.GetProperty("packageFolders").EnumerateObject().Select(f => f.Name)];
    }

    [GeneratedRegex(@"^\| (?!package)([\w.]+) \| ([\w.-]+) \| (.+) \|$")]
    private static partial Regex Row();
}
