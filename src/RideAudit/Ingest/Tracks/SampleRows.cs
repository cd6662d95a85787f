using RideAudit.Rides;

namespace RideAudit.Ingest.Tracks;

/// <summary>Collects samples at their own times and makes a track of them.</summary>
internal sealed class SampleRows
{
    private readonly List<double> _seconds = [];
    private readonly List<SampleRow> _rows = [];

    public int Count => _rows.Count;

    public IReadOnlyList<double> Seconds => _seconds;

    public void Add(double second, in SampleRow row)
    {
        _seconds.Add(second);
        _rows.Add(row);
    }

    /// <summary>The median step between neighbouring samples, s; 0 with fewer than two.</summary>
    public double UsualStep()
    {
        if (_seconds.Count < 2)
            return 0;
        var steps = new double[_seconds.Count - 1];
        for (var i = 0; i < steps.Length; i++)
            steps[i] = _seconds[i + 1] - _seconds[i];
        Array.Sort(steps);
        return steps[steps.Length / 2];
    }

    /// <summary>The track.</summary>
    /// <param name="zero">Unix second of the rows' second 0.</param>
    /// <param name="storedTimerSeconds">The recording's own timer time; null without one.</param>
    /// <param name="remarks">Gets a sentence for each kind of clock repair.</param>
    public Track ToTrack(long zero, double? storedTimerSeconds, List<string> remarks)
    {
        var (whole, rows) = WholeSeconds();
        var clock = ClockRepair.Of(whole.Select(s => zero + s).ToArray());
        remarks.AddRange(clock.Remarks);
        var kept = Enumerable.Range(0, rows.Count).Where(i => clock.Seconds[i] != ClockRepair.NoTime).ToArray();
        float[]? Column(SampleRow.Channel channel)
        {
            var column = Array.ConvertAll(kept, i => rows[i][channel]);
            return Array.TrueForAll(column, float.IsNaN) ? null : column;
        }
        return new Track
        {
            Seconds = Array.ConvertAll(kept, i => clock.Seconds[i]),
            PowerW = Column(SampleRow.Channel.Power),
            HeartRateBpm = Column(SampleRow.Channel.HeartRate),
            CadenceRpm = Column(SampleRow.Channel.Cadence),
            SpeedMps = Column(SampleRow.Channel.Speed),
            DistanceM = Column(SampleRow.Channel.Distance) is { } distance ? Array.ConvertAll(distance, m => (double)m) : null,
            StoredTimerSeconds = storedTimerSeconds,
        };
    }

    /// <summary>Samples several times a second become their mean: keeping the last of each second would throw most of them away.</summary>
    private (List<long> Seconds, List<SampleRow> Rows) WholeSeconds()
    {
        // Most recordings have one sample a second: a million rows are not copied for nothing.
        if (!Enumerable.Range(1, Math.Max(0, _rows.Count - 1)).Any(IsOfSecondBefore))
            return (_seconds.ConvertAll(s => (long)Math.Floor(s)), _rows);
        var seconds = new List<long>(_rows.Count);
        var rows = new List<SampleRow>(_rows.Count);
        for (var i = 0; i < _rows.Count;)
        {
            var second = (long)Math.Floor(_seconds[i]);
            var end = i + 1;
            while (end < _rows.Count && IsOfSecondBefore(end))
                end++;
            seconds.Add(second);
            rows.Add(end == i + 1 ? _rows[i] : Mean(i, end));
            i = end;
        }
        return (seconds, rows);
    }

    private bool IsOfSecondBefore(int row) => _seconds[row] > _seconds[row - 1] && Math.Floor(_seconds[row]) == Math.Floor(_seconds[row - 1]);

    private SampleRow Mean(int from, int to)
    {
        var mean = SampleRow.Missing;
        for (var channel = 0; channel < SampleRow.Channels; channel++)
            mean[channel] = SampleGrid.MeanValue([.. _rows[from..to].Select(r => r[channel])]);
        return mean;
    }
}
