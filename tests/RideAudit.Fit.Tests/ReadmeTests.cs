using RideAudit.Fit.Messages;
using RideAudit.Fit.Tests.Hazards;
using RideAudit.Fit.Writing;

namespace RideAudit.Fit.Tests;

/// <summary>The package's README: its examples stand here too, word for word, and run.</summary>
public class ReadmeTests
{
    private static readonly string Here = Repository.Path("tests", "RideAudit.Fit.Tests", "ReadmeTests.cs");
    private static readonly string Readme = Repository.Path("src", "RideAudit.Fit", "README.md");

    [Fact]
    public void Every_example_of_the_readme_is_run_here()
    {
        var code = Squeeze(File.ReadAllText(Here));
        string[] examples = [.. File.ReadAllText(Readme).Split("```csharp").Skip(1).Select(e => e.Split("```")[0])];

        Assert.Equal(2, examples.Length);
        Assert.InRange(examples[0].Trim().Split('\n').Length, 1, 10);
        Assert.All(examples, e => Assert.Contains(Squeeze(e), code));
    }

    [Fact]
    public void The_reading_example_prints_what_is_in_the_file()
    {
        var truncated = HazardTable.All.Single(h => h.Row == "A03");
        using StringWriter output = new();
        ReadingExample(HazardTable.PathOf(truncated), output);

        var lines = output.ToString().Trim().ReplaceLineEndings("\n").Split('\n');
        Assert.Equal(FormattableString.Invariant($"{truncated.Records} records, {truncated.PowerSum / 1000:F1} kJ"), lines[0]);
        Assert.StartsWith("Salvage at byte ", lines[1]);
    }

    [Fact]
    public void The_writing_example_makes_a_file_that_can_be_read() =>
        Assert.Equal([250f], FitDecoder.Decode(WritingExample(1_100_000_000)).Parts[0].Records.Power.ToArray());

    private static void ReadingExample(string path, TextWriter Console)
    {
        var file = FitDecoder.Decode(File.ReadAllBytes(path));
        foreach (var part in file.Parts.Where(p => p.IsActivity))
        {
            var records = part.Records;
            double work = 0;
            for (var i = 0; i < records.Count; i++)
                work += float.IsNaN(records.Power[i]) ? 0 : records.Power[i] / 1000;
            Console.WriteLine(FormattableString.Invariant($"{records.Count} records, {work:F1} kJ"));
        }

        foreach (var fault in file.Faults) Console.WriteLine($"{fault.Action} at byte {fault.ByteOffset}: {fault.Detail}");
    }

    private static byte[] WritingExample(uint start)
    {
        var writer = new FitWriter();
        writer.WriteFileId(new FitFileId(FitFileType.Activity, TimeCreated: start));
        writer.WriteRecord(new FitRecord(start, Power: 250, HeartRate: 140));
        var bytes = writer.Finish();
        return bytes;
    }

    private static string Squeeze(string code) => string.Concat(code.Where(c => !char.IsWhiteSpace(c)));
}
