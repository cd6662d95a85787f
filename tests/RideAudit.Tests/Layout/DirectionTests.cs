using System.Text.RegularExpressions;
using System.Xml.Linq;
using RideAudit.Tests.Support;

namespace RideAudit.Tests.Layout;

/// <summary>Data flows one way: Ingest → Rides → Figures → Weeks → Rules → Review. The folders of the core may only look the other way.</summary>
public sealed partial class DirectionTests
{
    private static readonly Dictionary<string, string[]> MayUse = new()
    {
        ["Units"] = [],
        ["Plan"] = ["Units"],
        ["Rides"] = ["Units"],
        ["Ingest"] = ["Units", "Rides", "Plan", "Fit"],
        ["Figures"] = ["Units", "Rides", "Plan"],
        ["Weeks"] = ["Units", "Figures", "Plan"],
        ["Rules"] = ["Units", "Figures", "Weeks", "Plan"],
        ["Formatting"] = ["Units", "Rides", "Figures", "Weeks", "Plan", "Rules"],
        ["Document"] = ["Units", "Rules", "Formatting"],
        ["Next"] = ["Units", "Figures", "Weeks", "Plan", "Rules", "Formatting", "Document", "Review", "Rides", "Ingest"],
        ["Review"] = ["Units", "Rides", "Ingest", "Figures", "Weeks", "Plan", "Rules", "Formatting", "Document"],
    };

    public static TheoryData<string> Folders => [.. MayUse.Keys];

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_folder_of_the_core_looks_only_where_its_data_come_from(string folder)
    {
        var allowed = MayUse[folder].Append(folder).ToHashSet();
        var files = Directory.GetFiles(Repository.Path("src", "RideAudit", folder), "*.cs", SearchOption.AllDirectories);
        Assert.NotEmpty(files);
        foreach (var file in files)
            foreach (Match use in Uses().Matches(File.ReadAllText(file)))
                Assert.True(allowed.Contains(use.Groups["folder"].Value), $"{folder}/{Path.GetFileName(file)} uses {use.Groups["folder"].Value}");
    }

    [Fact]
    public void Every_folder_of_the_core_is_in_the_table()
    {
        var folders = Directory.GetDirectories(Repository.Path("src", "RideAudit")).Select(Path.GetFileName).Except(["bin", "obj"]);
        Assert.Equal(MayUse.Keys.Order(StringComparer.Ordinal), folders.Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("RideAudit.Fit", "", "")]
    [InlineData("RideAudit", "RideAudit.Fit", "CsvHelper NodaTime Tomlyn")]
    [InlineData("RideAudit.Report", "RideAudit", "Avalonia Avalonia.Fonts.Inter")]
    [InlineData("RideAudit.Raster", "RideAudit.Report", "SkiaSharp SkiaSharp.NativeAssets.Linux.NoDependencies")]
    public void A_project_references_only_what_its_boundary_allows(string project, string projects, string packages)
    {
        var xml = XDocument.Load(Repository.Path("src", project, project + ".csproj"));
        var references = xml.Descendants("ProjectReference").Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/')));
        Assert.Equal(Words(projects), references.Order(StringComparer.Ordinal));
        Assert.Equal(Words(packages), xml.Descendants("PackageReference").Select(p => p.Attribute("Include")!.Value).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("RideAudit.Fit")]
    [InlineData("RideAudit")]
    [InlineData("RideAudit.Report")]
    [InlineData("RideAudit.Cli")]
    public void Only_the_rasteriser_draws_with_a_native_library(string project)
    {
        foreach (var file in Sources(project))
            Assert.DoesNotMatch(@"\b(SkiaSharp|HarfBuzzSharp|DllImport|LibraryImport)\b", File.ReadAllText(file));
    }

    [Fact]
    public void The_core_reads_no_clock_writes_no_file_and_prints_nothing()
    {
        foreach (var file in Sources("RideAudit").Concat(Sources("RideAudit.Fit")))
            Assert.DoesNotMatch(
                @"(?<!\.)\bDateTime\b|DateTimeOffset|SystemClock|Console\.|File\.(Write|Create|Append|OpenWrite|Move|Copy|Delete)|FileMode\.(Create|Append)",
                WithoutComments(File.ReadAllText(file)));
    }

    private static string[] Words(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static IEnumerable<string> Sources(string project) =>
        Directory.GetFiles(Repository.Path("src", project), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}"));

    private static string WithoutComments(string source) => Comment().Replace(source, "");

    [GeneratedRegex(@"\bRideAudit\.(?<folder>Units|Plan|Rides|Ingest|Figures|Weeks|Rules|Review|Fit|Document|Next|Formatting)\b")]
    private static partial Regex Uses();

    [GeneratedRegex("//.*")]
    private static partial Regex Comment();
}
