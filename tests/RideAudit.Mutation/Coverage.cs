using System.Diagnostics;

namespace RideAudit.Mutation;

/// <summary>Which changes a test reaches.</summary>
/// <param name="Milliseconds">How long it takes.</param>
/// <param name="Changes">Their numbers.</param>
internal sealed record Coverage(double Milliseconds, int[] Changes)
{
    /// <summary>A slower test is not asked: it would be asked thousands of times.</summary>
    private const int SlowestMilliseconds = 500;

    public static Dictionary<string, Coverage> Of(IEnumerable<OneTest> tests, ChangeSwitch core)
    {
        var reached = new Dictionary<string, Coverage>();
        foreach (var test in tests)
        {
            test.Passes();
            var clock = Stopwatch.StartNew();
            var passes = test.Passes();
            clock.Stop();
            if (!passes || clock.ElapsedMilliseconds > SlowestMilliseconds)
            {
                Console.Error.WriteLine($"{(passes ? "slow" : "fails")}: {test.Name}");
                continue;
            }
            core.BeginCounting();
            test.Passes();
            reached[test.Name] = new Coverage(clock.Elapsed.TotalMilliseconds, core.EndCounting());
        }
        return reached;
    }
}
