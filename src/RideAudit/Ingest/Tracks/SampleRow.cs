using System.Runtime.CompilerServices;

namespace RideAudit.Ingest.Tracks;

/// <summary>One sample of every channel, NaN where missing.</summary>
[InlineArray(Channels)]
internal struct SampleRow
{
    public const int Channels = 5;

    private float _first;

    public static SampleRow Missing
    {
        get
        {
            var row = default(SampleRow);
            ((Span<float>)row).Fill(float.NaN);
            return row;
        }
    }

    public float this[Channel channel]
    {
        readonly get => this[(int)channel];
        set => this[(int)channel] = value;
    }

    /// <summary>What a sample can hold.</summary>
    internal enum Channel
    {
        Power,
        HeartRate,
        Cadence,
        Speed,
        Distance,
    }
}
