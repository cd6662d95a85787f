namespace RideAudit.Fit.Messages;

/// <summary>Heart rate from hr messages (message 132): beats of a strap with times finer than a second, sent after the fact.</summary>
public sealed class HeartRateSeries
{
    private readonly List<double> _seconds = [];
    private readonly List<byte> _beatsPerMinute = [];

    internal HeartRateSeries()
    {
    }

    /// <summary>Number of values.</summary>
    public int Count => _seconds.Count;

    /// <summary>Times, FIT seconds with 1/1024 s resolution, in file order.</summary>
    public ReadOnlySpan<double> Seconds => System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_seconds);

    /// <summary>Heart rates, bpm, 1 to 254.</summary>
    public ReadOnlySpan<byte> BeatsPerMinute => System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_beatsPerMinute);

    internal void Add(double time, byte bpm)
    {
        _seconds.Add(time);
        _beatsPerMinute.Add(bpm);
    }

    internal void Append(HeartRateSeries other)
    {
        _seconds.AddRange(other._seconds);
        _beatsPerMinute.AddRange(other._beatsPerMinute);
    }

    internal void Clear()
    {
        _seconds.Clear();
        _beatsPerMinute.Clear();
    }
}
