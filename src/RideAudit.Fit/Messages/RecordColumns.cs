namespace RideAudit.Fit.Messages;

/// <summary>The growing store behind <see cref="RecordChannels"/>. Rows start out as missing; readers only write what is there.</summary>
internal sealed class RecordColumns
{
    private const int FirstCapacity = 64;
    private const int SingleColumns = (int)RecordColumn.Distance;
    private readonly float[][] singles = new float[SingleColumns][];
    private readonly int[] declared = new int[SingleColumns];
    private uint[] times = [];
    private double[] distances = [];
    private double[]? accumulatedPowers;
    private byte[]? balances;

    public RecordColumns() => Array.Fill(singles, []);

    public int Count { get; private set; }

    public int Capacity { get; private set; }

    public ReadOnlySpan<uint> Times => times.AsSpan(0, Count);

    public ReadOnlySpan<double> Distances => distances.AsSpan(0, Count);

    public ReadOnlySpan<float> OptionalDeveloperPower => HasDeveloperPower ? Channel(RecordColumn.DeveloperPower) : [];

    public ReadOnlySpan<double> OptionalAccumulatedPower => accumulatedPowers.AsSpan(0, accumulatedPowers is null ? 0 : Count);

    public ReadOnlySpan<byte> OptionalBalance => balances.AsSpan(0, balances is null ? 0 : Count);

    public uint[] TimeArray => times;

    public double[] DistanceArray => distances;

    private bool HasDeveloperPower => singles[(int)RecordColumn.DeveloperPower].Length > 0;

    public float[] Single(RecordColumn column) => singles[(int)column];

    public ReadOnlySpan<float> Channel(RecordColumn column) => singles[(int)column].AsSpan(0, Count);

    public Span<float> Writable(RecordColumn column) => singles[(int)column].AsSpan(0, Count);

    /// <summary>Notes that a number of records declared a field, valid or not.</summary>
    public void NoteDeclared(RecordColumn column, int records) => declared[(int)column] += records;

    public ChannelFacts FactsOf(RecordColumn column)
    {
        int values = 0, zeros = 0;
        foreach (float value in Channel(column))
        {
            values += float.IsNaN(value) ? 0 : 1;
            zeros += value == 0 ? 1 : 0;
        }

        int declaredRecords = Math.Min(Count, Math.Max(declared[(int)column], values));
        return new ChannelFacts(values, zeros, declaredRecords - values, Count - declaredRecords);
    }

    /// <summary>Makes room for at least one more row; <paramref name="expected"/> is what the bytes ahead can hold at most.</summary>
    public void Grow(int expected)
    {
        int capacity = Math.Max(FirstCapacity, Math.Max(Capacity * 2, Count + 1));
        if (Capacity == 0 && expected > 0)
            capacity = expected;
        for (int i = 0; i < SingleColumns; i++)
        {
            if (i != (int)RecordColumn.DeveloperPower || HasDeveloperPower)
                singles[i] = Resize(singles[i], capacity, float.NaN);
        }

        times = Resize(times, capacity, RecordChannels.NoTime);
        distances = Resize(distances, capacity, double.NaN);
        if (accumulatedPowers is not null)
            accumulatedPowers = Resize(accumulatedPowers, capacity, double.NaN);
        if (balances is not null)
            balances = Resize(balances, capacity, byte.MaxValue);
        Capacity = capacity;
    }

    /// <summary>The rows behind the last one, to be written and then committed.</summary>
    public Span<float> NextRows(RecordColumn column, int rows) => singles[(int)column].AsSpan(Count, rows);

    public void Commit(int rows) => Count += rows;

    /// <summary>Drops the rows from <paramref name="count"/> on.</summary>
    public void Truncate(int count)
    {
        for (int i = 0; i < SingleColumns; i++)
        {
            if (singles[i].Length > 0)
                singles[i].AsSpan(count, Count - count).Fill(float.NaN);
        }

        times.AsSpan(count, Count - count).Fill(RecordChannels.NoTime);
        distances.AsSpan(count, Count - count).Fill(double.NaN);
        accumulatedPowers?.AsSpan(count, Count - count).Fill(double.NaN);
        balances?.AsSpan(count, Count - count).Fill(byte.MaxValue);
        Count = count;
    }

    public float[] DeveloperPowers()
    {
        if (!HasDeveloperPower)
            singles[(int)RecordColumn.DeveloperPower] = Resize(Array.Empty<float>(), Capacity, float.NaN);
        return singles[(int)RecordColumn.DeveloperPower];
    }

    public double[] AccumulatedPowers() => accumulatedPowers ??= Resize(Array.Empty<double>(), Capacity, double.NaN);

    public byte[] Balances() => balances ??= Resize(Array.Empty<byte>(), Capacity, byte.MaxValue);

    private static T[] Resize<T>(T[] old, int capacity, T missing)
        where T : unmanaged
    {
        T[] grown = GC.AllocateUninitializedArray<T>(capacity);
        old.CopyTo(grown, 0);
        grown.AsSpan(old.Length).Fill(missing);
        return grown;
    }
}
