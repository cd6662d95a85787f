using System.Diagnostics;
using System.Globalization;

namespace RideAudit.Cli.Commands;

/// <summary>What each phase of one run took. The first one counts from the start of the process.</summary>
internal sealed class PhaseTimes
{
    private TimeSpan _processor;
    private long _began = Stopwatch.GetTimestamp();

    public PhaseTimes() => End("start");

    /// <summary>A line a phase, in order: milliseconds of processor time on all cores, and on the clock.</summary>
    public List<string> Lines { get; } = [];

    /// <summary>Ends the phase that runs; the next one begins.</summary>
    /// <param name="phase">What it is called.</param>
    public void End(string phase)
    {
        var (processor, now) = (Environment.CpuUsage.TotalTime, Stopwatch.GetTimestamp());
        Lines.Add(string.Create(CultureInfo.InvariantCulture, $"{phase}: {(processor - _processor).TotalMilliseconds:0} ms of processor time, {Stopwatch.GetElapsedTime(_began, now).TotalMilliseconds:0} ms"));
        (_processor, _began) = (processor, now);
    }
}
