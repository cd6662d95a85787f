using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace RideAudit.Tests.Layout;

/// <summary>A project references and does only what its boundary allows. What its folders may mention is held by the command line’s tests, on the compiled code of all projects.</summary>
public sealed partial class BoundaryTests
{
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
        // The one call of the system asks Windows whose the window is; it draws nothing.
        foreach (var file in Sources(project).Where(f => Path.GetFileName(f) != "WindowsConsole.cs"))
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

    [GeneratedRegex("//.*")]
    private static partial Regex Comment();
}
