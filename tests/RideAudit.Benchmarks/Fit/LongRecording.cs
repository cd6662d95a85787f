using RideAudit.Fit.Protocol;
using RideAudit.Fit.Writing;

namespace RideAudit.Benchmarks.Fit;

/// <summary>A made-up recording of a day and more at one record a second, in two layouts.</summary>
internal static class LongRecording
{
    public const int Seconds = 100_000;
    private const uint Start = 1_100_000_000;

    /// <summary>What a present-day head unit writes: 42 bytes a record with position, temperature, balance and accumulated power, most of it not needed here.</summary>
    public static byte[] HeadUnit() => Make(
        [
            new(253, FitBaseType.UInt32), new(0, FitBaseType.SInt32), new(1, FitBaseType.SInt32), new(5, FitBaseType.UInt32), new(29, FitBaseType.UInt32),
            new(73, FitBaseType.UInt32), new(78, FitBaseType.UInt32), new(7, FitBaseType.UInt16), new(9, FitBaseType.SInt16), new(108, FitBaseType.UInt16),
            new(3, FitBaseType.UInt8), new(4, FitBaseType.UInt8), new(13, FitBaseType.SInt8), new(30, FitBaseType.UInt8), new(53, FitBaseType.UInt8), new(107, FitBaseType.UInt8),
        ],
        i => [Start + (uint)i, 495_280_430 + i, 90_000_000 - i, 800 * i, 200 * i, 8_000 + (i % 500), 3_000 + (i % 90), Power(i), i % 300, 15, 120 + (i % 40), 80 + (i % 20), 21, 0x80 | 49, i % 128, 0]);

    /// <summary>Only what is needed: 17 bytes a record.</summary>
    public static byte[] Lean() => Make(
        [
            new(253, FitBaseType.UInt32), new(7, FitBaseType.UInt16), new(3, FitBaseType.UInt8), new(4, FitBaseType.UInt8), new(5, FitBaseType.UInt32), new(6, FitBaseType.UInt16), new(2, FitBaseType.UInt16),
        ],
        i => [Start + (uint)i, Power(i), 120 + (i % 40), 80 + (i % 20), 800 * i, 8_000 + (i % 500), 3_000 + (i % 90)]);

    private static int Power(int second) => second % 11 == 0 ? 0 : 150 + (second * 7919 % 200);

    private static byte[] Make(FitFieldLayout[] layout, Func<int, FitValue[]> record)
    {
        FitMessageWriter writer = new();
        writer.Define(0, 0, [new(0, FitBaseType.Enum)]);
        writer.Write(0, 4);
        writer.Define(1, 20, layout);
        for (var i = 0; i < Seconds; i++)
            writer.Write(1, record(i));
        writer.Define(2, 18, [new(253, FitBaseType.UInt32), new(2, FitBaseType.UInt32), new(5, FitBaseType.Enum)]);
        writer.Write(2, Start + Seconds, Start, 2);
        writer.Define(3, 34, [new(253, FitBaseType.UInt32), new(5, FitBaseType.UInt32)]);
        writer.Write(3, Start + Seconds, Start + Seconds);
        return writer.Finish();
    }
}
