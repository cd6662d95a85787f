using NodaTime;
using RideAudit.Rides;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Review;

/// <summary>One ride of a generated folder: power in whole watts, a heart rate, now and then a dropout.</summary>
internal sealed record FolderCase(int Day, int Hour, (int Seconds, int Watts, int Bpm)[] Blocks, int DropoutSeconds, bool HasPower, bool HasHeart)
{
    public static readonly LocalDate Monday = new(2026, 3, 2);

    public string File => $"day{Day:00}-{Hour:00}.fit";

    public int Seconds => Blocks.Sum(b => b.Seconds);

    public Recording ToRecording(int shiftDays = 0, int scale = 1)
    {
        var start = Monday.PlusDays(Day + shiftDays).At(new LocalTime(Hour, 0)).InUtc().ToInstant();
        var power = HasPower ? Power(scale) : null;
        var heart = HasHeart ? Made(b => b.Bpm) : null;
        return power is null && heart is null ? Recording(File, start, seconds: Seconds) : Recording(File, start, power, heart);
    }

    private float[] Power(int scale)
    {
        var power = Made(b => b.Watts * scale);
        // In the second quarter, so that a cut in the middle does not go through it.
        for (var i = 0; i < DropoutSeconds; i++)
            power[power.Length / 4 + i] = float.NaN;
        return power;
    }

    private float[] Made(Func<(int Seconds, int Watts, int Bpm), int> value) =>
        [.. Blocks.SelectMany(b => Enumerable.Repeat((float)value(b), b.Seconds))];
}
