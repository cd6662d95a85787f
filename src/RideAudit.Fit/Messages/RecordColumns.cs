using System.Buffers;

namespace RideAudit.Fit.Messages;

/// <summary>The growing store behind <see cref="RecordChannels"/>, in lent arrays. Rows start out as missing; readers only write what is there. A column is made when first asked for.</summary>
internal sealed class RecordColumns
{
    private const int FirstCapacity = 64;
    private const int SingleColumns = (int)RecordColumn.Distance;
    private readonly float[][] _singles = new float[SingleColumns][];
    private readonly int[] _declared = new int[SingleColumns];
    private uint[] _times = [];
    private double[] _distances = [];
    private double[] _accumulatedPowers = [];
    private byte[] _balances = [];

    public RecordColumns() => Array.Fill(_singles, []);

    public int Count { get; private set; }

    public int Capacity { get; private set; }

    /// <summary>The channels whose fields were declared.</summary>
    public FitChannels Declared { get; set; }

    public ReadOnlySpan<uint> Times => _times.AsSpan(0, Count);

    public ReadOnlySpan<double> Distances => DistanceArray.AsSpan(0, Count);

    public ReadOnlySpan<float> OptionalDeveloperPower => HasDeveloperPower ? Channel(RecordColumn.DeveloperPower) : [];

    public ReadOnlySpan<double> OptionalAccumulatedPower => _accumulatedPowers.Length == 0 ? [] : _accumulatedPowers.AsSpan(0, Count);

    public ReadOnlySpan<byte> OptionalBalance => _balances.Length == 0 ? [] : _balances.AsSpan(0, Count);

    public uint[] TimeArray => _times;

    public double[] DistanceArray => Made(ref _distances, double.NaN);

    private bool HasDeveloperPower => _singles[(int)RecordColumn.DeveloperPower].Length > 0;

    public float[] Single(RecordColumn column) => Made(ref _singles[(int)column], float.NaN);

    public ReadOnlySpan<float> Channel(RecordColumn column) => Writable(column);

    public Span<float> Writable(RecordColumn column) => Single(column).AsSpan(0, Count);

    public float[] DeveloperPowers() => Single(RecordColumn.DeveloperPower);

    public double[] AccumulatedPowers() => Made(ref _accumulatedPowers, double.NaN);

    public byte[] Balances() => Made(ref _balances, byte.MaxValue);

    /// <summary>Notes that a number of records declared a field, valid or not.</summary>
    public void NoteDeclared(RecordColumn column, int records) => _declared[(int)column] += records;

    public ChannelFacts FactsOf(RecordColumn column)
    {
        int values = 0, zeros = 0;
        foreach (var value in Channel(column))
        {
            values += float.IsNaN(value) ? 0 : 1;
            zeros += value == 0 ? 1 : 0;
        }

        var declaredRecords = Math.Min(Count, Math.Max(_declared[(int)column], values));
        return new ChannelFacts(values, zeros, declaredRecords - values, Count - declaredRecords);
    }

    /// <summary>Makes room for at least one more row; <paramref name="expected"/> is what the bytes ahead can hold at most.</summary>
    public void Grow(int expected)
    {
        var capacity = Math.Max(FirstCapacity, Math.Max(Capacity * 2, Count + 1));
        if (Capacity == 0 && expected > 0)
            capacity = expected;
        for (var i = 0; i < SingleColumns; i++)
            Grow(ref _singles[i], capacity, float.NaN);
        Grow(ref _times, capacity, RecordChannels.NoTime, isAlwaysThere: true);
        Grow(ref _distances, capacity, double.NaN);
        Grow(ref _accumulatedPowers, capacity, double.NaN);
        Grow(ref _balances, capacity, byte.MaxValue);
        Capacity = capacity;
    }

    /// <summary>The rows behind the last one, to be written and then committed.</summary>
    public Span<float> NextRows(RecordColumn column, int rows) => Single(column).AsSpan(Count, rows);

    public void Commit(int rows) => Count += rows;

    /// <summary>Drops the rows from <paramref name="count"/> on.</summary>
    public void Truncate(int count)
    {
        foreach (var single in _singles)
            Clear(single, count, float.NaN);
        Clear(_times, count, RecordChannels.NoTime);
        Clear(_distances, count, double.NaN);
        Clear(_accumulatedPowers, count, double.NaN);
        Clear(_balances, count, byte.MaxValue);
        Count = count;
    }

    /// <summary>Gives all arrays back; no row is left.</summary>
    public void GiveBack()
    {
        (Count, Capacity) = (0, 0);
        for (var i = 0; i < SingleColumns; i++)
            GiveBack(ref _singles[i]);
        GiveBack(ref _times);
        GiveBack(ref _distances);
        GiveBack(ref _accumulatedPowers);
        GiveBack(ref _balances);
    }

    private T[] Made<T>(ref T[] column, T missing)
        where T : unmanaged
    {
        if (column.Length == 0 && Capacity > 0)
        {
            column = ArrayPool<T>.Shared.Rent(Capacity);
            column.AsSpan(0, Capacity).Fill(missing);
        }

        return column;
    }

    private void Grow<T>(ref T[] column, int capacity, T missing, bool isAlwaysThere = false)
        where T : unmanaged
    {
        if (column.Length == 0 && !isAlwaysThere)
            return;
        var grown = ArrayPool<T>.Shared.Rent(capacity);
        column.AsSpan(0, Count).CopyTo(grown);
        grown.AsSpan(Count, capacity - Count).Fill(missing);
        GiveBack(ref column);
        column = grown;
    }

    private static void GiveBack<T>(ref T[] column)
    {
        if (column.Length > 0)
            ArrayPool<T>.Shared.Return(column);
        column = [];
    }

    private void Clear<T>(T[] column, int from, T missing)
    {
        if (column.Length > 0)
            column.AsSpan(from, Count - from).Fill(missing);
    }
}
