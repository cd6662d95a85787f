using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;

namespace RideAudit.Cli.Commands;

/// <summary>What each phase of one run took. The first one counts from the start of the process.</summary>
internal sealed class PhaseTimes : IDisposable
{
    private readonly ConcurrentDictionary<string, (TimeSpan Time, int Count)> _named = new();
    private readonly ActivityListener? _listener;
    private readonly List<string> _lines = [];
    private TimeSpan _processor;
    private long _began = Stopwatch.GetTimestamp();

    /// <param name="byName">True to time what the phases are made of as well, which costs a little itself.</param>
    public PhaseTimes(bool byName)
    {
        End("start");
        if (!byName)
            return;
        _listener = new ActivityListener
        {
            ShouldListenTo = source => source.Name == "RideAudit",
            Sample = (ref ActivityCreationOptions<ActivityContext> _) => ActivitySamplingResult.PropagationData,
            ActivityStopped = done => _named.AddOrUpdate(done.OperationName, (done.Duration, 1), (_, sum) => (sum.Time + done.Duration, sum.Count + 1)),
        };
        ActivitySource.AddActivityListener(_listener);
    }

    /// <summary>
    /// A line a phase, in order: milliseconds of processor time on all cores, and on the clock. Then what they are made of, the longest first:
    /// milliseconds on the clock, all threads added up, waiting for a processor among them.
    /// </summary>
    public IEnumerable<string> Lines => _lines.Concat(_named.OrderByDescending(n => n.Value.Time)
        .Select(n => string.Create(CultureInfo.InvariantCulture, $"  {n.Key}: {n.Value.Time.TotalMilliseconds:0.0} ms, {n.Value.Count} times")));

    /// <summary>Ends the phase that runs; the next one begins.</summary>
    /// <param name="phase">What it is called.</param>
    public void End(string phase)
    {
        var (processor, now) = (Environment.CpuUsage.TotalTime, Stopwatch.GetTimestamp());
        _lines.Add(string.Create(CultureInfo.InvariantCulture, $"{phase}: {(processor - _processor).TotalMilliseconds:0} ms of processor time, {Stopwatch.GetElapsedTime(_began, now).TotalMilliseconds:0} ms"));
        (_processor, _began) = (processor, now);
    }

    public void Dispose() => _listener?.Dispose();
}
