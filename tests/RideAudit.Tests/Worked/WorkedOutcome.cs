using System.Globalization;

namespace RideAudit.Tests.Worked;

/// <summary>One rider's block of testdata/worked/expected.txt.</summary>
internal sealed record WorkedOutcome(string Name, double Hours, double UncoveredHours, string[] Days, string[] Stress, Dictionary<string, string> NotKept)
{
    public static IReadOnlyList<WorkedOutcome> Read(string path)
    {
        var outcomes = new List<WorkedOutcome>();
        foreach (var line in File.ReadAllLines(path).Select(l => l.Split('#')[0].TrimEnd()).Where(l => l.Length > 0))
        {
            var words = line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
            if (!char.IsWhiteSpace(line[0]))
                outcomes.Add(new WorkedOutcome(words[0], 0, 0, [], [], []));
            else
                outcomes[^1] = outcomes[^1].With(words);
        }
        return outcomes;
    }

    private WorkedOutcome With(string[] words) => words[0] switch
    {
        "hours" => this with { Hours = Number(words[1]), UncoveredHours = Number(words[3]) },
        "days" => this with { Days = words[1..] },
        "stress" => this with { Stress = words[1..] },
        var rule => this with { NotKept = new(NotKept) { [rule] = string.Join(' ', words[1..]) } },
    };

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
