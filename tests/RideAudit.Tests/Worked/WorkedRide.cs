using System.Globalization;
using System.Text;
using NodaTime;
using NodaTime.Text;
using RideAudit.Tests.Demo;

namespace RideAudit.Tests.Worked;

/// <summary>A recording of a worked rider: blocks of even riding, a row every ten seconds.</summary>
internal sealed record WorkedRide(LocalDateTime Start, IReadOnlyList<WorkedBlock> Blocks)
{
    private const int RowSeconds = 10;

    /// <summary>Write UTC timestamps instead of counted seconds, from a zone; null: seconds, the start being in the file's name.</summary>
    public DateTimeZone? StampedFrom { get; init; }

    public string File => StampedFrom is null
        ? LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd-HHmm").Format(Start) + ".csv"
        : "stamped-" + LocalDateTimePattern.CreateWithInvariantCulture("uuuuMMdd").Format(Start) + ".csv";

    private int Seconds => Blocks.Sum(b => b.Seconds);

    private bool HasPower => Blocks.Any(b => b.Watts is not null);

    private bool HasHeart => Blocks.Any(b => b.Bpm is not null);

    public string Csv()
    {
        var text = new StringBuilder(StampedFrom is null ? "seconds" : "timestamp");
        text.Append(HasPower ? ",power" : "").Append(HasHeart ? ",heart_rate" : "").Append(HasPower || HasHeart ? ",cadence" : ",speed_kmh").Append("\r\n");
        // Steady watts with a changing cadence would be a stuck sensor: the cadence is steady too, and each day's own.
        var cadence = new DemoRandom((ulong)(Start.Date.DayOfYear * 24 + Start.Hour)).Between(84, 93);
        for (var second = 0; second < Seconds; second = Next(second))
        {
            var block = At(second);
            text.Append(Time(second));
            if (HasPower)
                text.Append(',').Append(block.Watts?.ToString(CultureInfo.InvariantCulture));
            if (HasHeart)
                text.Append(',').Append(block.Bpm?.ToString(CultureInfo.InvariantCulture));
            text.Append(',').Append(HasPower || HasHeart ? cadence : 25).Append("\r\n");
        }
        return text.ToString();
    }

    /// <summary>Every tenth second, and the last one: a recording ends with its last row.</summary>
    private int Next(int second) => second == Seconds - 1 ? Seconds : Math.Min(second + RowSeconds, Seconds - 1);

    private WorkedBlock At(int second)
    {
        var end = 0;
        foreach (var block in Blocks)
            if (second < (end += block.Seconds))
                return block;
        return Blocks[^1];
    }

    private string Time(int second) => StampedFrom is { } zone
        ? InstantPattern.General.Format(Start.InZoneStrictly(zone).ToInstant() + Duration.FromSeconds(second))
        : second.ToString(CultureInfo.InvariantCulture);
}
