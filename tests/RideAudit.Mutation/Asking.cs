namespace RideAudit.Mutation;

/// <summary>Asks the tests that reach a change, the quickest first, until one fails.</summary>
internal sealed class Asking
{
    // For a test of at most half a second.
    private const int PatienceMilliseconds = 10_000;

    private readonly Lock _writing = new();
    private readonly ChangeSwitch _core;
    private readonly string _answers;
    private readonly Dictionary<int, List<OneTest>> _reaching = [];
    private readonly HashSet<int> _answered = [];
    private readonly Dictionary<int, int> _asked = [];

    private int _now;
    private long _deadline = long.MaxValue;

    public Asking(IEnumerable<OneTest> tests, Dictionary<string, Coverage> reached, ChangeSwitch core, string answers)
    {
        (_core, _answers) = (core, answers);
        foreach (var test in tests.Where(t => reached.ContainsKey(t.Name)).OrderBy(t => reached[t.Name].Milliseconds))
            foreach (var id in reached[test.Name].Changes)
                (_reaching.TryGetValue(id, out var list) ? list : _reaching[id] = []).Add(test);
        foreach (var words in File.Exists(answers) ? File.ReadLines(answers).Select(l => l.Split(' ')) : [])
        {
            var id = int.Parse(words[0]);
            if (words[1] == "asked")
                _asked[id] = _asked.GetValueOrDefault(id) + 1;
            else
                _answered.Add(id);
        }
    }

    /// <returns>False where the process must begin again.</returns>
    public bool All(IEnumerable<int> ids)
    {
        new Thread(Watch) { IsBackground = true }.Start();
        foreach (var id in ids.Where(i => !_answered.Contains(i)))
        {
            if (!_reaching.TryGetValue(id, out var tests))
                Say(id, "NoCoverage");
            else if (_asked.GetValueOrDefault(id) > 1)
                Say(id, "Crash");
            else if (!Ask(id, tests))
                return false;
        }
        return true;
    }

    private bool Ask(int id, List<OneTest> tests)
    {
        Say(_now = id, "asked");
        _core.Activate(id);
        var noticed = tests.Find(t =>
        {
            Volatile.Write(ref _deadline, Environment.TickCount64 + PatienceMilliseconds);
            return !t.Passes();
        });
        Volatile.Write(ref _deadline, long.MaxValue);
        _core.Activate(ChangeSwitch.None);
        // What a change left behind in a static field must not count for the next one: asked first in a new process, it counts.
        var clean = noticed is null || noticed.Passes();
        if (clean || _asked.ContainsKey(id))
            Say(id, noticed is null ? "Survived" : $"Killed {noticed.Name}");
        return clean;
    }

    private void Watch()
    {
        while (Environment.TickCount64 < Volatile.Read(ref _deadline))
            Thread.Sleep(100);
        Say(_now, "Timeout");
        Environment.Exit(3);
    }

    private void Say(int id, string answer)
    {
        lock (_writing)
            File.AppendAllText(_answers, $"{id} {answer.ReplaceLineEndings(" ")}\n");
    }
}
