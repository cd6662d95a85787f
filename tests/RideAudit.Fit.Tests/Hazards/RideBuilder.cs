using RideAudit.Fit.Writing;
using Base = RideAudit.Fit.Protocol.FitBaseType;

namespace RideAudit.Fit.Tests.Hazards;

/// <summary>Builds rides message by message and keeps count of what it wrote, so that expected values come from the construction.</summary>
internal sealed class RideBuilder
{
    public const uint Start = 1_100_000_000;
    public const int RecordType = 1;
    public static readonly FitFieldLayout Time = new(253, Base.UInt32);
    public static readonly FitFieldLayout Power = new(7, Base.UInt16);
    public static readonly FitFieldLayout HeartRate = new(3, Base.UInt8);
    public static readonly FitFieldLayout Cadence = new(4, Base.UInt8);
    public static readonly FitFieldLayout Distance = new(5, Base.UInt32);
    public static readonly FitFieldLayout Speed = new(6, Base.UInt16);
    public static readonly FitFieldLayout Altitude = new(2, Base.UInt16);
    private readonly List<(int End, int Power)> _records = [];

    public FitMessageWriter Messages { get; } = new();

    public FitByteOrder Order { get; init; }

    public int Records => _records.Count;

    public double PowerSum => _records.Sum(r => (double)r.Power);

    /// <summary>Records, and the sum of their power, that end within so many bytes of messages.</summary>
    public (int Count, double Sum) Within(int messageBytes) =>
        (_records.Count(r => r.End <= messageBytes), _records.Where(r => r.End <= messageBytes).Sum(r => (double)r.Power));

    /// <summary>Power of a second: every tenth is a true 0, the others from a small congruential generator.</summary>
    public static int PowerAt(int second)
    {
        var state = (uint)second + 17;
        for (var i = 0; i < 3; i++)
            state = (state * 1_664_525) + 1_013_904_223;
        return second % 10 == 9 ? 0 : 150 + (int)((state >> 20) % 250);
    }

    /// <summary>A whole ride that nothing is wrong with.</summary>
    public static RideBuilder Whole(int seconds = 40, uint start = Start, FitByteOrder order = FitByteOrder.LittleEndian) =>
        new RideBuilder { Order = order }.Open(start).DefineRecords().Ride(0, seconds, start).Close(start, seconds);

    public RideBuilder Open(uint start = Start) => FileId(start).Timer(start, 0);

    public RideBuilder FileId(uint start = Start, byte type = 4)
    {
        Messages.Define(0, 0, [new(0, Base.Enum), new(1, Base.UInt16), new(2, Base.UInt16), new(4, Base.UInt32)], Order);
        Messages.Write(0, (int)type, 255, 1, start);
        return this;
    }

    public RideBuilder Timer(uint at, int eventType)
    {
        Messages.Define(2, 21, [Time, new(0, Base.Enum), new(1, Base.Enum)], Order);
        Messages.Write(2, at, 0, eventType);
        return this;
    }

    public RideBuilder DefineRecords(params FitFieldLayout[] more)
    {
        Messages.Define(RecordType, 20, [Time, Power, HeartRate, Cadence, Distance, Speed, Altitude, .. more], Order);
        return this;
    }

    public RideBuilder Ride(int from, int to, uint start = Start)
    {
        for (var i = from; i < to; i++)
            Record(PowerAt(i), start + (uint)i, PowerAt(i), 120 + (i % 30), 85 + (i % 7), 800 * i, 8000 + i, 2500 + i);
        return this;
    }

    /// <summary>Writes a record of the current layout and counts its power.</summary>
    public RideBuilder Record(int power, params FitValue[] values)
    {
        Messages.Write(RecordType, values);
        return Count(power);
    }

    public RideBuilder Count(int power)
    {
        _records.Add((Messages.Length, power));
        return this;
    }

    public RideBuilder Close(uint start = Start, int seconds = 40)
    {
        Timer(start + (uint)seconds, 4);
        return Session(start, seconds).Activity(start + (uint)seconds);
    }

    public RideBuilder Session(uint start = Start, int seconds = 40, byte sport = 2, int index = 0)
    {
        Messages.Define(4, 18, [Time, new(2, Base.UInt32), new(5, Base.Enum), new(6, Base.Enum), new(7, Base.UInt32), new(8, Base.UInt32), new(254, Base.UInt16)], Order);
        Messages.Write(4, start + (uint)seconds, start, (int)sport, 7, seconds * 1000, seconds * 1000, index);
        return this;
    }

    public RideBuilder Activity(uint at, long localOffset = 3600)
    {
        Messages.Define(5, 34, [Time, new(0, Base.UInt32), new(5, Base.UInt32), new(1, Base.UInt16)], Order);
        Messages.Write(5, at, 40_000, (long?)(at + localOffset), 1);
        return this;
    }

    public byte[] Finish(FitWriterOptions? options = null) => Messages.Finish(options);
}
