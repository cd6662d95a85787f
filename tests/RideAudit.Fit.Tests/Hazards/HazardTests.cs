namespace RideAudit.Fit.Tests.Hazards;

public class HazardTests
{
    public static TheoryData<string> Names => [.. HazardTable.All.Select(h => h.FileName)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_hazard_file_gives_its_expected_outcome(string name)
    {
        var hazard = HazardTable.All.Single(h => h.FileName == name);

        var file = FitDecoder.Decode(hazard.Bytes);

        Assert.Equal(hazard.Faults, file.Faults.Select(f => (f.Code, f.Action)));
        Assert.Equal(hazard.Rejection, file.Rejection?.Reason);
        Assert.Equal(hazard.Parts, file.Parts.Count);
        Assert.Equal(hazard.Records, file.Parts.Sum(p => p.Records.Count));
        Assert.Equal(hazard.PowerSum, file.Parts.Sum(p => Sum(p.Records.Power)));
        Assert.Equal(hazard.DeveloperPowerSum, file.Parts.Sum(p => Sum(p.Records.DeveloperPower)));
        Assert.Equal(hazard.Sessions, file.Parts.Sum(p => p.Sessions.Count));
        Assert.All(file.Faults, f => Assert.InRange(f.ByteOffset, 0, hazard.Bytes.Length));
        hazard.Also?.Invoke(file);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_committed_file_is_what_the_generator_makes(string name)
    {
        var hazard = HazardTable.All.Single(h => h.FileName == name);
        var path = HazardTable.PathOf(hazard);
        if (Repository.Updates)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, hazard.Bytes);
        }

        Assert.Equal(hazard.Bytes, File.ReadAllBytes(path));
    }

    [Fact]
    public void The_page_of_files_says_what_the_table_says()
    {
        var path = Path.Combine(HazardTable.Folder, "README.md");
        if (Repository.Updates)
            File.WriteAllText(path, HazardTable.Page());

        Assert.Equal(HazardTable.Page(), File.ReadAllText(path));
    }

    [Fact]
    public void Nothing_lies_in_the_folders_that_is_not_in_the_table()
    {
        var committed = new[] { "good", "bad" }.SelectMany(f => Directory.GetFiles(Path.Combine(HazardTable.Folder, f)));

        Assert.Equal(HazardTable.All.Select(HazardTable.PathOf).Order(StringComparer.Ordinal), committed.Order(StringComparer.Ordinal));
    }

    /// <summary>F14, a very large file, is no small file: the caps are tested by themselves.</summary>
    [Fact]
    public void Every_row_has_a_file()
    {
        var rows = new[] { ('A', 27), ('B', 26), ('C', 12), ('D', 16), ('E', 21), ('F', 16) }
            .SelectMany(g => Enumerable.Range(1, g.Item2).Select(n => FormattableString.Invariant($"{g.Item1}{n:00}")));

        Assert.Equal(["F14"], rows.Except(HazardTable.All.Select(h => h.Row)));
    }

    private static double Sum(ReadOnlySpan<float> values)
    {
        double sum = 0;
        foreach (var value in values)
            sum += float.IsNaN(value) ? 0 : value;
        return sum;
    }
}
