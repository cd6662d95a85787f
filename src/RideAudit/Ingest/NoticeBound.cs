using RideAudit.Formatting;

namespace RideAudit.Ingest;

/// <summary>Keeps notices few enough to be read: where very many files have one problem, the first are named and the others counted.</summary>
public static class NoticeBound
{
    /// <summary>Files named of each problem.</summary>
    public const int MostNamed = 100;

    /// <summary>The notices of the first files of each problem, then one notice for each problem that more files have.</summary>
    /// <param name="notices">In the order of their files' names. What was kept of a recording is always said.</param>
    /// <param name="first">True for those to name before the others; null: the first by name.</param>
    /// <returns>In the order given; the notices that only count come last.</returns>
    public static IReadOnlyList<FileNotice> Of(IReadOnlyCollection<FileNotice> notices, Func<FileNotice, bool>? first = null)
    {
        if (notices.Count <= MostNamed)
            return [.. notices];
        var leftOut = new HashSet<(string Problem, bool Unusable, string File)>();
        var counted = new List<FileNotice>();
        foreach (var problem in notices.Where(n => n.Kept is null).GroupBy(n => (n.Problem, n.Unusable)))
        {
            string[] others = [.. problem.OrderBy(n => first?.Invoke(n) == true ? 0 : 1).Select(n => n.File).Distinct().Skip(MostNamed)];
            leftOut.UnionWith(others.Select(file => (problem.Key.Problem, problem.Key.Unusable, file)));
            if (others.Length > 0)
                counted.Add(Counted(problem.Key.Problem, problem.Key.Unusable, others.Length));
        }
        return [.. notices.Where(n => n.Kept is not null || !leftOut.Contains((n.Problem, n.Unusable, n.File))), .. counted];
    }

    private static FileNotice Counted(string problem, bool unusable, int files) => new(
        Shown.Tally(files, "other file"),
        problem,
        null,
        $"{Shown.Tally(files, "other file")} {Shown.Noun(files, "has", "have")} the same problem as {MostNamed} that are named: {problem}.",
        unusable)
    { OtherFiles = files };
}
