using RideAudit.Fit.Messages;
using RideAudit.Fit.Writing;
using Base = RideAudit.Fit.Protocol.FitBaseType;

namespace RideAudit.Fit.Tests.Hazards;

/// <summary>Rows F8 to F11 and B19: hr messages with 12-bit times.</summary>
internal static class HeartRateCases
{
    private const int Beats = 32;
    private const int TicksBetween = 512;
    private static readonly FitFieldLayout ShortTimes = new(10, Base.Byte, 12);
    private static readonly FitFieldLayout EightBeats = new(6, Base.UInt8, 8);

    public static IEnumerable<HazardCase> All()
    {
        yield return Ride("F08", "hr-messages", "heart rate in hr messages only", m => WriteAll(m, 1000), CheckPart);
        yield return Ride("F09", "hr-rollover", "the 1/1024 s clock passes 2^32 between two messages", m => WriteAll(m, uint.MaxValue - 3000), CheckPart);
        yield return Ride("F11", "hr-padded", "the last message repeats its last time to fill up", WritePadded, CheckPadded);
        yield return Ride("B19", "array-partly-invalid", "three of eight heart rates are invalid", WriteWithHoles, s => Assert.Equal(Beats + 1 - 3, s.Count));
        yield return Ride("F10", "hr-without-anchor", "12-bit times without a full time before them", m => WriteShorts(m, 1000, 0), s => Assert.Equal(0, s.Count)) with
        {
            Faults = [(FitFaultCode.HeartRateWithoutAnchor, FitFaultAction.Skip)],
        };
    }

    /// <summary>A part that holds nothing but heart rate: one beat a half second from the ride's start.</summary>
    public static byte[] Part(bool withFileId)
    {
        RideBuilder part = new();
        if (withFileId)
            part.FileId();
        WriteAll(part.Messages, 1000);
        return part.Finish();
    }

    /// <summary>The anchor and its 32 beats, half a second apart, 100 bpm and one more with each.</summary>
    public static void CheckPart(HeartRateSeries series)
    {
        Assert.Equal(Beats + 1, series.Count);
        for (var i = 0; i <= Beats; i++)
        {
            Assert.Equal(RideBuilder.Start + (i * 0.5), series.Seconds[i], 9);
            Assert.Equal(100 + i, series.BeatsPerMinute[i]);
        }
    }

    private static HazardCase Ride(string row, string name, string what, Action<FitMessageWriter> write, Action<HeartRateSeries> check)
    {
        var ride = new RideBuilder().Open();
        ride.Messages.Define(RideBuilder.RecordType, 20, [RideBuilder.Time, RideBuilder.Power]);
        for (var i = 0; i < 18; i++)
            ride.Record(RideBuilder.PowerAt(i), RideBuilder.Start + (uint)i, RideBuilder.PowerAt(i));
        write(ride.Messages);
        return new HazardCase(row, name, what, ride.Close(seconds: 18).Finish())
        {
            Records = ride.Records,
            PowerSum = ride.PowerSum,
            Also = f => check(f.Parts[0].HeartRate),
        };
    }

    private static void WriteAll(FitMessageWriter messages, uint anchor)
    {
        WriteAnchor(messages, anchor);
        WriteShorts(messages, anchor, 0);
    }

    private static void WriteAnchor(FitMessageWriter messages, uint anchor)
    {
        messages.Define(6, 132, [RideBuilder.Time, new(0, Base.UInt16), new(9, Base.UInt32), new(6, Base.UInt8)]);
        messages.Write(6, RideBuilder.Start, 0, anchor, 100);
    }

    private static void WriteShorts(FitMessageWriter messages, uint anchor, int holes)
    {
        messages.Define(7, 132, [ShortTimes, EightBeats]);
        for (var first = 1; first <= Beats; first += 8)
        {
            byte[] beats = [.. Enumerable.Range(first, 8).Select(i => i <= holes ? (byte)255 : (byte)(100 + i))];
            messages.Write(7, Pack(Enumerable.Range(first, 8).Select(i => anchor + (uint)(i * TicksBetween))), beats);
        }
    }

    private static void WriteWithHoles(FitMessageWriter messages)
    {
        WriteAnchor(messages, 1000);
        WriteShorts(messages, 1000, 3);
    }

    private static void WritePadded(FitMessageWriter messages)
    {
        WriteAnchor(messages, 1000);
        messages.Define(7, 132, [ShortTimes, EightBeats]);
        uint[] times = [.. Enumerable.Range(1, 8).Select(i => 1000 + (uint)(Math.Min(i, 5) * TicksBetween))];
        messages.Write(7, Pack(times), new byte[] { 101, 102, 103, 104, 105, 105, 105, 105 });
    }

    private static void CheckPadded(HeartRateSeries series)
    {
        Assert.Equal(6, series.Count);
        Assert.Equal(RideBuilder.Start + 2.5, series.Seconds[5], 9);
    }

    /// <summary>Eight times, their low twelve bits, least significant first.</summary>
    private static byte[] Pack(IEnumerable<uint> times)
    {
        var packed = new byte[12];
        var bit = 0;
        foreach (var time in times)
        {
            for (var i = 0; i < 12; i++, bit++)
                packed[bit / 8] |= (byte)(((time >> i) & 1) << (bit % 8));
        }

        return packed;
    }
}
