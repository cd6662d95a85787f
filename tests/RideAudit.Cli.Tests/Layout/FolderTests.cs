using RideAudit.Rules;

namespace RideAudit.Cli.Tests.Layout;

/// <summary>Folders look one way, in the compiled code and not only in its text. Data flow from Ingest over Rides, Figures, Weeks and Rules to Review.</summary>
public sealed class FolderTests
{
    private const string Core = "RideAudit.Core.dll";

    /// <summary>Folders of the core, each with the others it may mention.</summary>
    private static readonly Dictionary<string, string[]> MayUse = new()
    {
        ["Formatting"] = [],
        ["Units"] = ["Formatting"],
        ["Plan"] = ["Units", "Formatting"],
        ["Rides"] = ["Units", "Formatting"],
        ["Ingest"] = ["Units", "Rides", "Plan", "Formatting"],
        ["Figures"] = ["Units", "Rides", "Plan", "Formatting"],
        ["Weeks"] = ["Units", "Figures", "Plan", "Formatting"],
        ["Sessions"] = ["Units", "Plan", "Rides", "Figures", "Formatting"],
        ["Held"] = ["Units", "Rides", "Figures", "Sessions", "Plan", "Formatting"],
        ["Rules"] = ["Units", "Figures", "Weeks", "Plan", "Formatting"],
        ["Document"] = ["Units", "Rides", "Figures", "Weeks", "Plan", "Held", "Rules", "Formatting"],
        ["Next"] = ["Units", "Figures", "Weeks", "Plan", "Rules", "Formatting", "Document", "Review", "Rides", "Ingest", "Sessions", "Held"],
        ["Review"] = ["Units", "Rides", "Ingest", "Figures", "Weeks", "Plan", "Rules", "Formatting", "Document", "Sessions", "Held"],
    };

    [Theory]
    [InlineData("RideAudit.Fit.dll", "RideAudit.Fit")]
    [InlineData(Core, "RideAudit")]
    [InlineData("RideAudit.Report.dll", "RideAudit.Report")]
    [InlineData("rideaudit.dll", "RideAudit.Cli")]
    [InlineData(Core, "RideAudit.Ingest")]
    public void No_way_from_a_folder_leads_back_to_it(string assembly, string root)
    {
        var graph = FolderGraph.Of(assembly, root);
        Assert.NotEmpty(graph.Folders);
        var circles = graph.Circles().ToArray();
        Assert.True(circles.Length == 0, string.Join('\n', circles.Select(c => $"{root}: {c}\n{graph.Why(c)}")));
    }

    [Fact]
    public void A_folder_of_the_core_mentions_only_those_its_data_come_from()
    {
        var graph = FolderGraph.Of(Core, "RideAudit");
        Assert.Equal(MayUse.Keys.Order(StringComparer.Ordinal), graph.Folders);
        Assert.All(graph.References.Where(r => MayUse.ContainsKey(graph.NodeOf(r.From)) && IsOfTheCore(r.To)), r =>
            Assert.True(
                graph.NodeOf(r.From) == graph.NodeOf(r.To) || MayUse[graph.NodeOf(r.From)].Contains(graph.NodeOf(r.To)),
                $"{graph.NodeOf(r.From)}: {r.From.Name} mentions {r.To.Name} of {graph.NodeOf(r.To)}"));

        bool IsOfTheCore(CompiledReferences.Type type) => type.Namespace.StartsWith("RideAudit.", StringComparison.Ordinal) && MayUse.ContainsKey(graph.NodeOf(type));
    }

    [Fact]
    public void No_folder_holds_more_files_than_a_reader_finds_one_in()
    {
        var folders = Directory.EnumerateDirectories(Path.Combine(Repository.Root, "src"), "*", SearchOption.AllDirectories)
            .Where(d => !d.Contains($"{Path.DirectorySeparatorChar}obj", StringComparison.Ordinal) && !d.Contains($"{Path.DirectorySeparatorChar}bin", StringComparison.Ordinal))
            .Select(d => (Folder: d, Files: Directory.EnumerateFiles(d, "*.cs").Count())).ToArray();
        Assert.Contains(folders, f => f.Files > 20);
        Assert.All(folders, f => Assert.True(f.Files <= 40, $"{f.Folder} holds {f.Files} files"));
    }

    [Fact]
    public void A_rules_id_stands_in_the_rule_alone()
    {
        var ids = RuleBook.Standard.Ids.Where(id => id.Contains('-', StringComparison.Ordinal)).Select(id => $"\"{id}\"").ToArray();
        var naming = Directory.EnumerateFiles(Path.Combine(Repository.Root, "src"), "*.cs", SearchOption.AllDirectories)
            .SelectMany(f => File.ReadLines(f).Where(l => ids.Any(id => l.Contains(id, StringComparison.Ordinal))), (f, line) => (File: Path.GetFileName(f), Line: line.Trim())).ToArray();
        Assert.Equal(ids.Length, naming.Count(n => n.Line.Contains(" Id => ", StringComparison.Ordinal)));
        Assert.All(naming, n => Assert.True(n.Line.Contains(" Id => ", StringComparison.Ordinal) || n.Line.Contains(" ShortName => ", StringComparison.Ordinal), $"{n.File}: {n.Line}"));
    }

    [Fact]
    public void Only_the_ingest_and_the_workout_files_know_the_FIT_protocol()
    {
        var graph = FolderGraph.Of(Core, "RideAudit");
        var knowing = graph.References.Where(r => r.To.Namespace.StartsWith("RideAudit.Fit", StringComparison.Ordinal)).Select(r => r.From.Namespace).Distinct().ToArray();
        Assert.NotEmpty(knowing);
        Assert.All(knowing, n => Assert.Matches("^RideAudit.(Ingest|Sessions)", n));
    }

    [Fact]
    public void Only_the_walk_through_a_folder_touches_a_file_system()
    {
        string[] doors = ["File", "FileInfo", "FileStream", "FileSystemInfo", "Directory", "DirectoryInfo"];
        var graph = FolderGraph.Of(Core, "RideAudit");
        var touching = graph.References.Where(r => r.To.Namespace == "System.IO" && doors.Contains(r.To.Name)).Select(r => r.From.Name).Distinct();
        Assert.Equal(["FolderFiles", "FolderLook", "FolderReader", "FolderWalker", "RealPath"], touching.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void What_a_method_body_alone_mentions_is_seen()
    {
        var references = CompiledReferences.In(Path.Combine(AppContext.BaseDirectory, Core));
        Assert.Contains(references, r => r is { From.Name: "FileOpener", To.Name: "TcxReader" });
        Assert.Contains(references, r => r is { From.Name: "FolderReader", To.Name: "FileStream" });
    }
}
