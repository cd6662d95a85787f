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

    /// <summary>Stands for no usable time.</summary>
    public const long NoTime = long.MinValue;

    private readonly Memory<long> _seconds;
    private readonly Func<long, long, bool> _ranOver;
    private readonly List<ClockRun> _runs;
    private readonly long[] _shifts;
    private readonly List<string> _remarks = [];

    private ClockRepair(Memory<long> seconds, Func<long, long, bool> ranOver)
    {
        _seconds = seconds;
        _ranOver = ranOver;
        if (IsOneSoundClock(Seconds))
        {
            (_runs, _shifts) = ([ClockRun.Of(Seconds)], [0]);
            HasAllTimes = true;
            return;
        }
        _runs = Runs();
        if (DropStrays())
            _runs = Runs();
        _shifts = new long[_runs.Count];
        ShiftRuns();
        CountStepsBack();
        HasAllTimes = !Seconds.Contains(NoTime);
    }

    /// <summary>Each row's time after repair, s; <see cref="NoTime"/> for a row without a usable one.</summary>
    public Span<long> Seconds => _seconds.Span;

    /// <summary>True when every row has a usable time.</summary>
    public bool HasAllTimes { get; }

    /// <summary>True when a clock was set back: a time near that moment can then belong to either clock.</summary>
    public bool IsAmbiguous { get; private set; }

    public ImmutableArray<string> Remarks => [.. _remarks];

    /// <param name="seconds">Times in the order of the file; they are repaired in place.</param>
    /// <param name="ranOver">Tells of two times, the earlier first, whether the timer is known to have run from one to the other; null where nothing is known.</param>
    public static ClockRepair Of(Memory<long> seconds, Func<long, long, bool>? ranOver = null) => new(seconds, ranOver ?? ((_, _) => false));

    /// <summary>The repaired time of something that is no row, such as an event: by the clock its time is nearest to.</summary>
    public long Map(long second)
    {
        var best = -1;
        for (var i = 0; i < _runs.Count; i++)
            if (best < 0 || _runs[i].DistanceTo(second) <= _runs[best].DistanceTo(second))
                best = i;
        return best < 0 ? second : second + _shifts[best];
    }

    /// <summary>As nearly all clocks are: every row has a time, none is before the last, and no gap could be a clock being set. Nothing is to be repaired.</summary>
    private static bool IsOneSoundClock(ReadOnlySpan<long> seconds)
    {
        if (seconds.IsEmpty || seconds[0] == NoTime)
            return false;
        for (var i = 1; i < seconds.Length; i++)
            if ((ulong)(seconds[i] - seconds[i - 1]) > RunningJumpSeconds)
                return false;
        return true;
    }

    private List<ClockRun> Runs()
    {
        var runs = new List<ClockRun>();
        var run = default(ClockRun);
        var seconds = Seconds;
        for (var i = 0; i < seconds.Length; i++)
        {
            var second = seconds[i];
            if (second == NoTime)
                continue;
            if (run.Count > 0 && (second - run.Last < -StepBackSeconds || IsJump(run.Last, second)))
            {
                runs.Add(run);
                run = default;
            }
            run.Take(i, second);
        }
        if (run.Count > 0)
            runs.Add(run);
        return runs;
    }

    private bool IsJump(long from, long to)
    {
        var (low, high) = (Math.Min(from, to), Math.Max(from, to));
        return high - low > JumpSeconds || (high - low > RunningJumpSeconds && _ranOver(low, high));
    }

    private bool DropStrays()
    {
        var runs = _runs;
        var dropped = 0;
        for (var k = 1; k < runs.Count; k++)
        {
            var isLast = k == runs.Count - 1;
            var isStray = IsJump(runs[k - 1].Last, runs[k].First)
                && (isLast ? runs[k - 1].Count > FewRows : !IsJump(runs[k - 1].Last, runs[k + 1].First));
            if (runs[k].Count > FewRows || !isStray)
                continue;
            Seconds[runs[k].From..runs[k].To].Fill(NoTime);
            dropped += runs[k].Count;
        }
        if (dropped > 0)
            _remarks.Add($"{dropped} {(dropped == 1 ? "record" : "records")} with an impossible date left out.");
        return dropped > 0;
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
            for (var i = _runs[k].From; _shifts[k] != 0 && i < _runs[k].To; i++)
                if (Seconds[i] != NoTime)
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
            if (second == NoTime)
                continue;
            steps += second < last ? 1 : 0;
            last = second;
        }
        if (steps > FewStepsBack)
            _remarks.Add($"The records step back in time {steps} times and were put in order.");
    }

    /// <summary>Neighbouring rows of one clock.</summary>
    private struct ClockRun
    {
        /// <summary>Its first row.</summary>
        public int From { get; private set; }

        /// <summary>The row after its last.</summary>
        public int To { get; private set; }

        /// <summary>Rows with a time.</summary>
        public int Count { get; private set; }

        /// <summary>Time of the first such row, s.</summary>
        public long First { get; private set; }

        /// <summary>Time of the last.</summary>
        public long Last { get; private set; }

        /// <summary>The earliest time.</summary>
        public long Low { get; private set; }

        /// <summary>The latest.</summary>
        public long High { get; private set; }

        /// <summary>All rows, in order of time.</summary>
        public static ClockRun Of(ReadOnlySpan<long> seconds) => new()
        {
            To = seconds.Length,
            Count = seconds.Length,
            First = seconds[0],
            Last = seconds[^1],
            Low = seconds[0],
            High = seconds[^1],
        };

        public void Take(int row, long second)
        {
            if (Count == 0)
                (From, First, Low, High) = (row, second, second, second);
            (To, Last) = (row + 1, second);
            Count++;
            Low = Math.Min(Low, second);
            High = Math.Max(High, second);
        }

        public readonly long DistanceTo(long second) => second < Low ? Low - second : second > High ? second - High : 0;
    }
}
