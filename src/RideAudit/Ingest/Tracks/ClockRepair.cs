using System.Collections.Immutable;

namespace RideAudit.Ingest.Tracks;

/// <summary>Finds clocks that were set in mid-ride and times that cannot be, and puts rows on one clock: the latest.</summary>
internal sealed class ClockRepair
{
    /// <summary>A jump of more than this inside one recording is a clock being set, not a pause, s.</summary>
    private const long JumpSeconds = 30L * 86_400;

    /// <summary>The same while the timer ran over the jump.</summary>
    private const long RunningJumpSeconds = 86_400;

    /// <summary>A step back of more than this is a clock being set, not rows out of order, s.</summary>
    private const long StepBackSeconds = 60;

    /// <summary>So few rows on a clock of their own, between or behind others, are damage.</summary>
    private const int FewRows = 5;

    private const int FewStepsBack = 5;

    /// <summary>Overlap, as a share of the shorter run, from which two that start together are the same rows.</summary>
    private const double SameRowsOverlap = 0.8;

    private readonly Func<long, long, bool> _ranOver;
    private readonly List<ClockRun> _runs;
    private readonly long[] _shifts;
    private readonly List<string> _remarks = [];

    private ClockRepair(long?[] seconds, Func<long, long, bool> ranOver)
    {
        Seconds = seconds;
        _ranOver = ranOver;
        DropStrays();
        _runs = Runs();
        _shifts = new long[_runs.Count];
        ShiftRuns();
        CountStepsBack();
    }

    /// <summary>Each row's time after repair, s; null for a row without a usable one.</summary>
    public long?[] Seconds { get; }

    /// <summary>True when a clock was set back: a time near that moment can then belong to either clock.</summary>
    public bool IsAmbiguous { get; private set; }

    public ImmutableArray<string> Remarks => [.. _remarks];

    /// <param name="seconds">Times in the order of the file; the array is taken over.</param>
    /// <param name="ranOver">Tells of two times, the earlier first, whether the timer is known to have run from one to the other; null where nothing is known.</param>
    public static ClockRepair Of(long?[] seconds, Func<long, long, bool>? ranOver = null) => new(seconds, ranOver ?? ((_, _) => false));

    /// <summary>The repaired time of something that is no row, such as an event: by the clock its time is nearest to.</summary>
    public long Map(long second)
    {
        var best = -1;
        for (var i = 0; i < _runs.Count; i++)
            if (best < 0 || _runs[i].DistanceTo(second) <= _runs[best].DistanceTo(second))
                best = i;
        return best < 0 ? second : second + _shifts[best];
    }

    private List<ClockRun> Runs()
    {
        var runs = new List<ClockRun>();
        for (var i = 0; i < Seconds.Length; i++)
        {
            if (Seconds[i] is not { } second)
                continue;
            if (runs.Count == 0 || second - runs[^1].Last < -StepBackSeconds || IsJump(runs[^1].Last, second))
                runs.Add(ClockRun.At(i, second));
            else
                runs[^1] = runs[^1].With(i, second);
        }
        return runs;
    }

    private bool IsJump(long from, long to)
    {
        var (low, high) = (Math.Min(from, to), Math.Max(from, to));
        return high - low > JumpSeconds || (high - low > RunningJumpSeconds && _ranOver(low, high));
    }

    private void DropStrays()
    {
        var runs = Runs();
        var dropped = 0;
        for (var k = 1; k < runs.Count; k++)
        {
            var isLast = k == runs.Count - 1;
            var isStray = IsJump(runs[k - 1].Last, runs[k].First)
                && (isLast ? runs[k - 1].Count > FewRows : !IsJump(runs[k - 1].Last, runs[k + 1].First));
            if (runs[k].Count > FewRows || !isStray)
                continue;
            Array.Fill(Seconds, null, runs[k].From, runs[k].To - runs[k].From);
            dropped += runs[k].Count;
        }
        if (dropped > 0)
            _remarks.Add($"{dropped} {(dropped == 1 ? "record" : "records")} with an impossible date left out.");
    }

    private void ShiftRuns()
    {
        for (var k = _runs.Count - 2; k >= 0; k--)
        {
            var (run, next) = (_runs[k], _runs[k + 1]);
            _shifts[k] = _shifts[k + 1];
            if (!ClockWasSet(run, next))
                continue;
            _shifts[k] += next.First - 1 - run.Last;
            IsAmbiguous |= run.Last - next.First is > 0 and <= JumpSeconds;
        }
        for (var k = 0; k < _runs.Count; k++)
            for (var i = _runs[k].From; i < _runs[k].To; i++)
                Seconds[i] += _shifts[k];
        if (Array.Exists(_shifts, s => s != 0))
            _remarks.Add("The clock was set during the ride: what came before was moved to the later clock.");
    }

    /// <summary>Anything but rows that were written a second time: those are sorted in.</summary>
    private static bool ClockWasSet(ClockRun run, ClockRun next)
    {
        var overlap = Math.Min(run.High, next.High) - Math.Max(run.Low, next.Low);
        var shorter = Math.Min(run.High - run.Low, next.High - next.Low);
        return Math.Abs(next.First - run.First) > StepBackSeconds || overlap < SameRowsOverlap * shorter;
    }

    private void CountStepsBack()
    {
        var (steps, last) = (0, long.MinValue);
        foreach (var second in Seconds)
        {
            if (second < last)
                steps++;
            last = second ?? last;
        }
        if (steps > FewStepsBack)
            _remarks.Add($"The records step back in time {steps} times and were put in order.");
    }

    /// <summary>Neighbouring rows of one clock.</summary>
    /// <param name="From">Its first row.</param>
    /// <param name="To">The row after its last.</param>
    /// <param name="Count">Rows with a time.</param>
    /// <param name="First">Time of the first such row, s.</param>
    /// <param name="Last">Time of the last.</param>
    /// <param name="Low">The earliest time.</param>
    /// <param name="High">The latest.</param>
    private readonly record struct ClockRun(int From, int To, int Count, long First, long Last, long Low, long High)
    {
        public static ClockRun At(int row, long second) => new(row, row + 1, 1, second, second, second, second);

        public ClockRun With(int row, long second) =>
            this with { To = row + 1, Count = Count + 1, Last = second, Low = Math.Min(Low, second), High = Math.Max(High, second) };

        public long DistanceTo(long second) => second < Low ? Low - second : second > High ? second - High : 0;
    }
}
