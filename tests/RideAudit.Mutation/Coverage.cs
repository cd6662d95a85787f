using System.Diagnostics;

namespace RideAudit.Mutation;

/// <summary>Which changes each test reaches.</summary>
internal static class Coverage
{
    /// <summary>A slower test is not asked: it would be asked thousands of times.</summary>
    private const int SlowestMilliseconds = 200;

    public static Dictionary<string, int[]> Of(IEnumerable<OneTest> tests, ChangeSwitch core)
    {
        var reached = new Dictionary<string, int[]>();
        foreach (var test in tests)
        {
            test.Passes();
            var clock = Stopwatch.StartNew();
            var passes = test.Passes();
            if (!passes || clock.ElapsedMilliseconds > SlowestMilliseconds)
            {
                Console.Error.WriteLine($"{(passes ? "slow" : "fails")}: {test.Name}");
                continue;
            }
            core.BeginCounting();
            test.Passes();
            reached[test.Name] = core.EndCounting();
        }
        return reached;
    }
}
