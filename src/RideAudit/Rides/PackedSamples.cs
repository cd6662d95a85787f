using System.Collections;
using System.Diagnostics.CodeAnalysis;
using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace RideAudit.Rides;

/// <summary>One channel, a value a second, NaN where missing. Whole values, as most sensors give, are held in one or two bytes each; it gives back exactly what it was given.</summary>
[CollectionBuilder(typeof(PackedSamples), nameof(Of))]
public sealed class PackedSamples : IReadOnlyList<float>
{
    private readonly byte[]? _bytes;
    private readonly ushort[]? _words;
    private readonly float[]? _floats;

    private PackedSamples(ReadOnlySpan<float> samples)
    {
        Count = samples.Length;
        (Values, Highest, var isWhole) = Facts(samples);
        if (!isWhole || Highest >= ushort.MaxValue)
            _floats = samples.ToArray();
        else if (Highest >= byte.MaxValue)
            PackWords(samples, _words = GC.AllocateUninitializedArray<ushort>(Count));
        else
            PackBytes(samples, _bytes = GC.AllocateUninitializedArray<byte>(Count));
    }

    /// <summary>Seconds, with or without a value.</summary>
    public int Count { get; }

    /// <summary>Seconds with a value.</summary>
    public int Values { get; }

    /// <summary>The highest value; −∞ without any.</summary>
    public float Highest { get; }

    /// <summary>One second's value; NaN where missing.</summary>
    /// <param name="index">The second, 0 up to <see cref="Count"/>.</param>
    public float this[int index]
    {
        get
        {
            Span<float> one = stackalloc float[1];
            CopyTo(index, one);
            return one[0];
        }
    }

    /// <summary>Packs samples.</summary>
    /// <param name="samples">One value a second, NaN where missing.</param>
    public static PackedSamples Of(ReadOnlySpan<float> samples) => new(samples);

    /// <summary>Packs samples.</summary>
    [return: NotNullIfNotNull(nameof(samples))]
    public static implicit operator PackedSamples?(float[]? samples) => samples is null ? null : new(samples);

    /// <summary>Writes a stretch out in full.</summary>
    /// <param name="from">Its first second.</param>
    /// <param name="samples">Gets as many as it is long.</param>
    public void CopyTo(int from, Span<float> samples)
    {
        if (_bytes is not null)
            Unpack(_bytes.AsSpan(from, samples.Length), samples);
        else if (_words is not null)
            Unpack(_words.AsSpan(from, samples.Length), samples);
        else
            _floats.AsSpan(from, samples.Length).CopyTo(samples);
    }

    /// <summary>The mean of the values there are; NaN without any.</summary>
    public double Mean()
    {
        if (_bytes is null)
            return MeanOfAny();
        long sum = 0;
        foreach (var value in _bytes)
            sum += value;
        // Missing values were added as the number that stands for them.
        return (double)(sum - (long)byte.MaxValue * (Count - Values)) / Values;
    }

    private double MeanOfAny()
    {
        using var samples = Lend();
        double sum = 0;
        foreach (var sample in samples.Span)
            sum += float.IsNaN(sample) ? 0 : sample;
        return sum / Values;
    }

    /// <summary>All of them in full, in a lent buffer.</summary>
    internal Lent<float> Lend()
    {
        var lent = new Lent<float>(Count);
        CopyTo(0, lent.Span);
        return lent;
    }

    /// <inheritdoc/>
    public IEnumerator<float> GetEnumerator()
    {
        for (var i = 0; i < Count; i++)
            yield return this[i];
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private static (int Values, float Highest, bool IsWhole) Facts(ReadOnlySpan<float> samples)
    {
        var wide = MemoryMarshal.Cast<float, Vector<float>>(samples);
        var (values, whole) = (Vector<int>.Zero, Vector<int>.Zero);
        var most = new Vector<float>(float.NegativeInfinity);
        foreach (ref readonly var sample in wide)
        {
            // Each comparison that holds is −1.
            values -= Vector.Equals(sample, sample);
            whole -= Vector.Equals(sample, Vector.ConvertToSingle(Vector.ConvertToInt32Native(sample))) & Vector.GreaterThanOrEqual(sample, Vector<float>.Zero);
            most = Vector.ConditionalSelect(Vector.GreaterThan(sample, most), sample, most);
        }
        var (count, wholes, highest) = (Vector.Sum(values), Vector.Sum(whole), float.NegativeInfinity);
        for (var lane = 0; lane < Vector<float>.Count; lane++)
            highest = Math.Max(highest, most[lane]);
        foreach (var sample in samples[(wide.Length * Vector<float>.Count)..])
        {
            count += float.IsNaN(sample) ? 0 : 1;
            wholes += sample >= 0 && sample == float.ConvertToIntegerNative<int>(sample) ? 1 : 0;
            highest = sample > highest ? sample : highest;
        }
        return (count, highest, wholes == count);
    }

    // The largest number stands for a missing value: all bits of a whole number that is cut to size.
    private static void PackBytes(ReadOnlySpan<float> samples, Span<byte> packed)
    {
        for (var i = 0; i < packed.Length && i < samples.Length; i++)
            packed[i] = (byte)Whole(samples[i]);
    }

    private static void PackWords(ReadOnlySpan<float> samples, Span<ushort> packed)
    {
        for (var i = 0; i < packed.Length && i < samples.Length; i++)
            packed[i] = (ushort)Whole(samples[i]);
    }

    private static int Whole(float sample) => float.IsNaN(sample) ? -1 : float.ConvertToIntegerNative<int>(sample);

    private static void Unpack(ReadOnlySpan<byte> packed, Span<float> samples)
    {
        for (var i = 0; i < packed.Length && i < samples.Length; i++)
            samples[i] = packed[i] == byte.MaxValue ? float.NaN : packed[i];
    }

    private static void Unpack(ReadOnlySpan<ushort> packed, Span<float> samples)
    {
        for (var i = 0; i < packed.Length && i < samples.Length; i++)
            samples[i] = packed[i] == ushort.MaxValue ? float.NaN : packed[i];
    }
}
