namespace RideAudit.Fit.Messages;

/// <summary>The records of a part (message 20), one array a channel, all of length <see cref="Count"/> and in file order.</summary>
/// <remarks>
/// A missing value is NaN (<see cref="NoTime"/> for times); 0 is a value, except for heart rate, where devices write 0 for "no strap" and it is missing here.
/// Positions on the earth are never read. Values are what the file says: spikes, duplicates and steps back in time are left in.
/// </remarks>
public sealed class RecordChannels
{
    /// <summary>Stands in <see cref="Timestamps"/> for a record without time.</summary>
    public const uint NoTime = uint.MaxValue;

    private readonly RecordColumns _columns;

    internal RecordChannels(RecordColumns columns) => _columns = columns;

    /// <summary>The channels that some record declares and that were asked for; each of the others is missing throughout.</summary>
    public FitChannels Declared => _columns.Declared;

    /// <summary>Number of records.</summary>
    public int Count => _columns.Count;

    /// <summary>Times, FIT seconds; <see cref="NoTime"/> if unknown. May repeat and step back.</summary>
    public ReadOnlySpan<uint> Timestamps => _columns.Times;

    /// <summary>Power of the native field, W; NaN if missing.</summary>
    public ReadOnlySpan<float> Power => _columns.Channel(RecordColumn.Power);

    /// <summary>Heart rate, bpm, 1 to 254; NaN if missing. Filled from hr messages where the record has none.</summary>
    public ReadOnlySpan<float> HeartRate => _columns.Channel(RecordColumn.HeartRate);

    /// <summary>Cadence with its fraction where stored, rpm; NaN if missing.</summary>
    public ReadOnlySpan<float> Cadence => _columns.Channel(RecordColumn.Cadence);

    /// <summary>Speed, m/s; the enhanced field where valid, else the basic, else the compressed one; NaN if missing.</summary>
    public ReadOnlySpan<float> SpeedMps => _columns.Channel(RecordColumn.Speed);

    /// <summary>Altitude, m; the enhanced field where valid, else the basic one; NaN if missing.</summary>
    public ReadOnlySpan<float> AltitudeM => _columns.Channel(RecordColumn.Altitude);

    /// <summary>Distance, m; the explicit field where valid, else unwrapped from the compressed one; NaN if missing.</summary>
    public ReadOnlySpan<double> DistanceM => _columns.Distances;

    /// <summary>Power of a developer field that says it is power, W; NaN if missing; empty if the part has none.</summary>
    public ReadOnlySpan<float> DeveloperPower => _columns.OptionalDeveloperPower;

    /// <summary>Accumulated power, W·s at one record a second, unwrapped; NaN if missing; empty if the part has none.</summary>
    public ReadOnlySpan<double> AccumulatedPower => _columns.OptionalAccumulatedPower;

    /// <summary>Balance bytes as stored, 0xFF if missing (see <see cref="PedalBalance.FromByte"/>); empty if the part has none.</summary>
    public ReadOnlySpan<byte> Balance => _columns.OptionalBalance;

    /// <summary>How the native power channel is filled: tells a dropout from coasting, and a dead field from no field.</summary>
    public ChannelFacts PowerFacts => _columns.FactsOf(RecordColumn.Power);

    /// <summary>How the heart-rate channel is filled; 0 bpm counts as invalid, a value from hr messages as a value.</summary>
    public ChannelFacts HeartRateFacts => _columns.FactsOf(RecordColumn.HeartRate);

    /// <summary>Native power of one record, else its developer power, W; NaN if neither is there.</summary>
    /// <param name="index">0 up to <see cref="Count"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such record.</exception>
    public float PowerOrDeveloperPower(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, Count);
        var native = Power[index];
        return float.IsNaN(native) && DeveloperPower.Length > 0 ? DeveloperPower[index] : native;
    }

    internal void GiveBack() => _columns.GiveBack();

    /// <summary>Indices of the records in order of time; records of one time keep file order, those without time come last.</summary>
    public int[] InTimeOrder()
    {
        var order = new int[Count];
        var keys = new ulong[Count];
        var times = Timestamps;
        for (var i = 0; i < order.Length; i++)
        {
            order[i] = i;
            keys[i] = ((ulong)times[i] << 32) | (uint)i;
        }

        Array.Sort(keys, order);
        return order;
    }
}
