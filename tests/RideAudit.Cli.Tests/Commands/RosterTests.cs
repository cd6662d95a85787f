using System.Text.Json;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Commands;

public class RosterTests
{
    [Fact]
    public void A_rider_whose_files_or_rider_file_are_broken_never_stops_the_rest()
    {
        using var folder = Riders();
        folder.Write("riders/bad file/one.fit", "not a ride");
        folder.Write("riders/bad rider/rider.toml", "experience = 7\n");
        var ended = RealProgram.Run(folder.Path, "roster", "riders", "--as-of", Demo.AsOf, "--out", "out");
        Assert.Equal((0, ""), (ended.Code, ended.Error));
        Assert.Equal(
            ["out/a-review-2026-06-15.pdf", "out/b-review-2026-06-15.pdf", "out/overview.csv", "out/overview.json", "out/overview.pdf"],
            folder.Names().Where(n => n.StartsWith("out/", StringComparison.Ordinal)));
        using var json = JsonDocument.Parse(File.ReadAllText(folder.At("out/overview.json")));
        Assert.Equal("rideaudit-roster/1", json.RootElement.GetProperty("schema").GetString());
        var riders = json.RootElement.GetProperty("riders").EnumerateArray().ToList();
        Assert.Equal(["a", "b", "bad file", "bad rider"], riders.Select(r => r.GetProperty("folder").GetString()));
        Assert.Equal(["broken", "broken", "no review", "no review"], riders.Select(r => r.GetProperty("need").GetString()));
        Assert.Contains("one.fit", riders[2].GetProperty("why").GetString(), StringComparison.Ordinal);
        Assert.Contains("rider.toml:1:", riders[3].GetProperty("why").GetString(), StringComparison.Ordinal);
        Assert.All(riders, r => Assert.False(string.IsNullOrWhiteSpace(r.GetProperty("why").GetString())));
    }

    [Fact]
    public void The_CSV_says_what_the_JSON_says()
    {
        using var folder = Riders();
        RealProgram.Run(folder.Path, "roster", "riders", "--as-of", Demo.AsOf, "--out", "out", "--quiet");
        using var json = JsonDocument.Parse(File.ReadAllText(folder.At("out/overview.json")));
        var rows = File.ReadAllText(folder.At("out/overview.csv")).Split("\r\n");
        var first = json.RootElement.GetProperty("riders")[0];
        Assert.Equal(4, rows.Length);
        // What is one value a rider has the JSON's name; an event is its first day, and every rule has a column of its own.
        string[] nested = ["facts", "verdicts", "weeks"];
        string[] rules = [.. first.GetProperty("verdicts").EnumerateArray().Select(v => v.GetProperty("rule").GetString()!)];
        Assert.Equal(first.EnumerateObject().Select(p => p.Name).Except(nested).Concat(rules), rows[0].Split(','));
        Assert.EndsWith(string.Concat(first.GetProperty("verdicts").EnumerateArray().Select(v => "," + v.GetProperty("verdict").GetString())), rows[1], StringComparison.Ordinal);
        Assert.StartsWith($"a,Rider A,broken,\"{first.GetProperty("why").GetString()}\",2026-06-15,", rows[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Everybodys_next_week_is_laid_out_in_one_run_and_no_folder_is_touched()
    {
        using var folder = Riders();
        var ended = RealProgram.Run(folder.Path, "roster", "riders", "--as-of", Demo.AsOf, "--out", "out", "--next");
        Assert.Equal((0, ""), (ended.Code, ended.Error));
        Assert.Equal(2, ended.Out.Split('\n').Count(l => l.TrimStart().StartsWith("Next, ", StringComparison.Ordinal)));
        Assert.True(File.Exists(folder.At("out/a-next-2026-06-22.ics")));
        var rows = File.ReadAllLines(folder.At("out/next.csv"));
        Assert.StartsWith("folder,label,date,kind,minutes,", rows[0], StringComparison.Ordinal);
        Assert.Equal(["a", "b"], rows.Skip(1).Select(r => r.Split(',')[0]).Distinct());
        Assert.All(new[] { "a", "b" }, r => Assert.Equal(File.ReadAllBytes(Path.Combine(Repository.Demo, "plan.csv")), File.ReadAllBytes(folder.At($"riders/{r}/plan.csv"))));
    }

    [Fact]
    public void Asked_to_it_writes_each_riders_plan_table_and_leaves_rows_made_by_hand()
    {
        using var folder = Riders();
        folder.Write("riders/a/plan.csv", "date,kind,minutes,session\n2026-06-24,endurance,40,with the children\n");
        File.Delete(folder.At("riders/b/plan.csv"));
        var ended = RealProgram.Run(folder.Path, "roster", "riders", "--as-of", Demo.AsOf, "--out", "out", "--next", "--write-plans");
        Assert.Equal((0, ""), (ended.Code, ended.Error));
        var a = File.ReadAllText(folder.At("riders/a/plan.csv"));
        Assert.Contains("2026-06-24,endurance,40,with the children", a, StringComparison.Ordinal);
        Assert.Single(a.Split('\n'), l => l.StartsWith("2026-06-24", StringComparison.Ordinal));
        Assert.Contains(",rideaudit ", a, StringComparison.Ordinal);
        Assert.Contains(",rideaudit ", File.ReadAllText(folder.At("riders/b/plan.csv")), StringComparison.Ordinal);
        Assert.Equal(2, RealProgram.Run(folder.Path, "roster", "riders", "--write-plans").Code);
    }

    [Fact]
    public void An_output_folder_inside_the_roster_is_not_a_rider()
    {
        using var folder = Riders();
        Assert.Equal(0, RealProgram.Run(folder.Path, "roster", "riders", "--as-of", Demo.AsOf, "--out", "riders/monday", "--quiet").Code);
        Assert.Equal(0, RealProgram.Run(folder.Path, "roster", "riders", "--as-of", Demo.AsOf, "--out", "riders/tuesday", "--quiet").Code);
        using var json = JsonDocument.Parse(File.ReadAllText(folder.At("riders/tuesday/overview.json")));
        Assert.Equal(2, json.RootElement.GetProperty("riders").GetArrayLength());
    }

    [Theory]
    [InlineData("--fail-on broken", 1)]
    [InlineData("--strict", 4)]
    [InlineData("", 0)]
    public void Exit_codes_are_those_of_a_review(string options, int code)
    {
        using var folder = Riders();
        folder.Write("riders/c/rides.txt", "none");
        var ended = RealProgram.Run(folder.Path, ["roster", "riders", "--as-of", Demo.AsOf, "--quiet", .. options.Split(' ', StringSplitOptions.RemoveEmptyEntries)]);
        Assert.Equal((code, ""), (ended.Code, ended.Out));
        Assert.True(Directory.Exists(folder.At($"roster-{Demo.AsOf}")));
    }

    [Fact]
    public void Three_when_no_rider_can_be_reviewed()
    {
        using var folder = new TempFolder();
        folder.Write("riders/a/one.fit", "not a ride");
        Assert.Equal(3, RealProgram.Run(folder.Path, "roster", "riders").Code);
    }

    [Fact]
    public void A_single_riders_folder_is_told_that_its_own_files_are_nobodys()
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, "mine", from: "2026-06-20");
        Demo.CopyTo(folder, "mine/2026", from: "2026-06-20", riderFile: false);
        var beside = Directory.EnumerateFiles(folder.At("mine")).Count();
        var ended = RealProgram.Run(folder.Path, "roster", "mine", "--as-of", Demo.AsOf, "--out", "out");
        Assert.Equal(0, ended.Code);
        Assert.Contains($"{beside} files beside the sub-folders of mine are not part of any rider.", ended.Error, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(File.ReadAllText(folder.At("out/overview.json")));
        Assert.Equal("2026", json.RootElement.GetProperty("riders")[0].GetProperty("label").GetString());
    }

    [Fact]
    public void A_rider_without_a_review_has_no_counts_and_an_exception_is_named()
    {
        using var folder = Riders();
        folder.Write("riders/c/rides.txt", "none");
        File.AppendAllText(folder.At("riders/a/rider.toml"), "\n[[exception]]\nfrom = 2026-06-15\nto = 2026-06-21\nkind = \"away\"\n");
        var ended = RealProgram.Run(folder.Path, "roster", "riders", "--as-of", Demo.AsOf, "--out", "out");
        Assert.Contains("away week", ended.Out, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(File.ReadAllText(folder.At("out/overview.json")));
        var riders = json.RootElement.GetProperty("riders").EnumerateArray().ToDictionary(r => r.GetProperty("folder").GetString()!);
        Assert.Equal(JsonValueKind.Null, riders["c"].GetProperty("not_judged").ValueKind);
        Assert.Equal(JsonValueKind.Null, riders["c"].GetProperty("files_not_used").ValueKind);
        Assert.Equal("away", riders["a"].GetProperty("exception").GetString());
        Assert.Equal("broken", riders["a"].GetProperty("need").GetString());
        Assert.Contains(File.ReadAllText(folder.At("out/overview.csv")).Split("\r\n"), l => l.StartsWith("a,Rider A,broken,", StringComparison.Ordinal) && l.Contains(",away,", StringComparison.Ordinal));
    }

    private static TempFolder Riders()
    {
        var folder = new TempFolder();
        Demo.CopyTo(folder, "riders/b");
        Demo.CopyTo(folder, "riders/a");
        return folder;
    }
}
