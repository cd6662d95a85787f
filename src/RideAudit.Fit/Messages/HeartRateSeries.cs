namespace RideAudit.Fit.Messages;

/// <summary>Heart rate from hr messages (message 132): beats of a strap with times finer than a second, sent after the fact.</summary>
public sealed class HeartRateSeries
{
    private readonly List<double> seconds = [];
    private readonly List<byte> beatsPerMinute = [];

    internal HeartRateSeries()
    {
    }

    /// <summary>Number of values.</summary>
    public int Count => seconds.Count;

    /// <summary>Times, FIT seconds with 1/1024 s resolution, in file order.</summary>
    public ReadOnlySpan<double> Seconds => System.Runtime.InteropServices.CollectionsMarshal.AsSpan(seconds);

    /// <summary>Heart rates, bpm, 1 to 254.</summary>
    public ReadOnlySpan<byte> BeatsPerMinute => System.Runtime.InteropServices.CollectionsMarshal.AsSpan(beatsPerMinute);

    internal void Add(double time, byte bpm)
    {
        seconds.Add(time);
        beatsPerMinute.Add(bpm);
    }

    internal void Append(HeartRateSeries other)
    {
        seconds.AddRange(other.seconds);
        beatsPerMinute.AddRange(other.beatsPerMinute);
    }

    internal void Clear()
    {
        seconds.Clear();
        beatsPerMinute.Clear();
    }
}
