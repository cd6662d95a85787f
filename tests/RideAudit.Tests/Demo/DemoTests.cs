namespace RideAudit.Tests.Demo;

public sealed class DemoTests
{
    private static string Folder => Repository.Demo;

    [Fact]
    public void The_demo_files_are_what_the_generator_makes()
    {
        var made = DemoFiles.All();
        if (Repository.Updates)
            foreach (var (name, bytes) in made)
                File.WriteAllBytes(Path.Combine(Folder, name), bytes);
        var committed = Directory.GetFiles(Folder).Select(Path.GetFileName).Where(n => n!.EndsWith(".fit") || (n.EndsWith(".csv") && n != "plan.csv"));
        Assert.Equal(made.Keys, committed.Order(StringComparer.Ordinal));
        foreach (var (name, bytes) in made)
            Assert.True(bytes.AsSpan().SequenceEqual(File.ReadAllBytes(Path.Combine(Folder, name))), name);
    }

    [Fact]
    public void The_demo_stays_under_six_megabytes() =>
        Assert.InRange(Directory.GetFiles(Folder).Sum(f => new FileInfo(f).Length), 1, 6_000_000);
}
