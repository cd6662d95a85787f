namespace RideAudit.Fit.Messages;

/// <summary>The growing store behind <see cref="RecordChannels"/>. Rows start out as missing; readers only write what is there.</summary>
internal sealed class RecordColumns
{
    private const int FirstCapacity = 64;
    private const int SingleColumns = (int)RecordColumn.Distance;
    private readonly float[][] _singles = new float[SingleColumns][];
    private readonly int[] _declared = new int[SingleColumns];
    private uint[] _times = [];
    private double[] _distances = [];
    private double[]? _accumulatedPowers;
    private byte[]? _balances;

    public RecordColumns() => Array.Fill(_singles, []);

    public int Count { get; private set; }

    public int Capacity { get; private set; }

    public ReadOnlySpan<uint> Times => _times.AsSpan(0, Count);

    public ReadOnlySpan<double> Distances => _distances.AsSpan(0, Count);

    public ReadOnlySpan<float> OptionalDeveloperPower => HasDeveloperPower ? Channel(RecordColumn.DeveloperPower) : [];

    public ReadOnlySpan<double> OptionalAccumulatedPower => _accumulatedPowers.AsSpan(0, _accumulatedPowers is null ? 0 : Count);

    public ReadOnlySpan<byte> OptionalBalance => _balances.AsSpan(0, _balances is null ? 0 : Count);

    public uint[] TimeArray => _times;

    public double[] DistanceArray => _distances;

    private bool HasDeveloperPower => _singles[(int)RecordColumn.DeveloperPower].Length > 0;

    public float[] Single(RecordColumn column) => _singles[(int)column];

    public ReadOnlySpan<float> Channel(RecordColumn column) => _singles[(int)column].AsSpan(0, Count);

    public Span<float> Writable(RecordColumn column) => _singles[(int)column].AsSpan(0, Count);

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
        {
            if (i != (int)RecordColumn.DeveloperPower || HasDeveloperPower)
                _singles[i] = Resize(_singles[i], capacity, float.NaN);
        }

        _times = Resize(_times, capacity, RecordChannels.NoTime);
        _distances = Resize(_distances, capacity, double.NaN);
        if (_accumulatedPowers is not null)
            _accumulatedPowers = Resize(_accumulatedPowers, capacity, double.NaN);
        if (_balances is not null)
            _balances = Resize(_balances, capacity, byte.MaxValue);
        Capacity = capacity;
    }

    /// <summary>The rows behind the last one, to be written and then committed.</summary>
    public Span<float> NextRows(RecordColumn column, int rows) => _singles[(int)column].AsSpan(Count, rows);

    public void Commit(int rows) => Count += rows;

    /// <summary>Drops the rows from <paramref name="count"/> on.</summary>
    public void Truncate(int count)
    {
        for (var i = 0; i < SingleColumns; i++)
        {
            if (_singles[i].Length > 0)
                _singles[i].AsSpan(count, Count - count).Fill(float.NaN);
        }

        _times.AsSpan(count, Count - count).Fill(RecordChannels.NoTime);
        _distances.AsSpan(count, Count - count).Fill(double.NaN);
        _accumulatedPowers?.AsSpan(count, Count - count).Fill(double.NaN);
        _balances?.AsSpan(count, Count - count).Fill(byte.MaxValue);
        Count = count;
    }

    public float[] DeveloperPowers()
    {
        if (!HasDeveloperPower)
            _singles[(int)RecordColumn.DeveloperPower] = Resize(Array.Empty<float>(), Capacity, float.NaN);
        return _singles[(int)RecordColumn.DeveloperPower];
    }

    public double[] AccumulatedPowers() => _accumulatedPowers ??= Resize(Array.Empty<double>(), Capacity, double.NaN);

    public byte[] Balances() => _balances ??= Resize(Array.Empty<byte>(), Capacity, byte.MaxValue);

    private static T[] Resize<T>(T[] old, int capacity, T missing)
        where T : unmanaged
    {
        var grown = GC.AllocateUninitializedArray<T>(capacity);
        old.CopyTo(grown, 0);
        grown.AsSpan(old.Length).Fill(missing);
        return grown;
    }
}
