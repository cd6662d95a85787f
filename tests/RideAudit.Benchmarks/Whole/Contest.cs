namespace RideAudit.Benchmarks.Whole;

/// <summary>Commands run in turn, one after the other and all over again, so that a machine that other work slows down slows them all.</summary>
internal sealed class Contest
{
    private readonly List<(string Name, string[] Command, List<Run> Runs)> _entries = [];

    /// <summary>Enters a command.</summary>
    public Contest Add(string name, params string[] command)
    {
        _entries.Add((name, command, []));
        return this;
    }

    /// <summary>Runs all of them so often, after one round that does not count.</summary>
    public Contest Run(int rounds)
    {
        for (var round = 0; round <= rounds; round++)
            foreach (var (_, command, runs) in _entries)
            {
                var run = Whole.Run.Of(command);
                if (round > 0)
                    runs.Add(run);
            }
        return this;
    }

    /// <summary>The median of one figure of a command.</summary>
    public double Median(string name, Func<Run, double> figure) => MedianOf(Runs(name).Select(figure));

    /// <summary>The median over the rounds of one command's figure over another's.</summary>
    public double Ratio(string name, string other, Func<Run, double> figure) =>
        MedianOf(Runs(name).Zip(Runs(other), (a, b) => figure(a) / Math.Max(figure(b), 0.005)));

    /// <summary>The commands, in the order they were entered.</summary>
    public IEnumerable<string> Names => _entries.Select(e => e.Name);

    private List<Run> Runs(string name) => _entries.First(e => e.Name == name).Runs;

    private static double MedianOf(IEnumerable<double> values)
    {
        var sorted = values.Order().ToArray();
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }
}
