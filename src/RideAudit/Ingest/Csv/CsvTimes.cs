using NodaTime;
using RideAudit.Ingest.Text;

namespace RideAudit.Ingest.Csv;

/// <summary>Reads a time column: seconds, clock or elapsed times, or ISO 8601 timestamps.</summary>
/// <param name="context">The rider, for the zone of times without offset.</param>
/// <param name="column">The time column, for its unit.</param>
/// <param name="decimalComma">A comma stands for the decimal point.</param>
internal sealed class CsvTimes(IngestContext context, CsvHeader.Column column, bool decimalComma)
{
    private const double HalfDaySeconds = 43_200;
    private const double DaySeconds = 86_400;

    private double _dayShift;
    private double _lastClock = double.NegativeInfinity;

    /// <summary>Local minus universal time as the timestamps write it, s; null where they write none, or Z.</summary>
    public long? FileOffsetSeconds { get; private set; }

    /// <summary>True when the rows say no date.</summary>
    public bool NeedsDate { get; private set; }

    /// <summary>True when clock times were read: the first one is the start's time of day.</summary>
    public bool IsClock { get; private set; }

    /// <summary>Seconds since the Unix epoch, or since the start (or its midnight) when <see cref="NeedsDate"/>; null when the cell is no time.</summary>
    public double? Read(string cell) =>
        Timestamp(cell) ?? (WrittenNumbers.Parse(cell, decimalComma) is { } number ? Numeric(number * column.Factor) : Clock(cell));

    private double? Numeric(double seconds)
    {
        // Any year in which a bicycle computer existed; thousandths since 1970 are as common as seconds. Anything smaller counts from the start.
        if (seconds is > 631_152_000_000 and < 32_503_680_000_000)
            return seconds / 1000;
        if (seconds is > 631_152_000 and < 32_503_680_000)
            return seconds;
        NeedsDate = true;
        return seconds is >= 0 and < 31_536_000 ? seconds : null;
    }

    /// <summary>Hours, minutes and seconds, or minutes and seconds: 1:02:03.5, 2:03, 6:00:00 p.m.</summary>
    private double? Clock(string cell)
    {
        var scanner = new TimeScanner(cell);
        var digits = scanner.DigitsAhead;
        if (digits > 3 || scanner.Number(digits) is not { } first || scanner.Take(":") is null)
            return null;
        var ahead = scanner.DigitsAhead;
        var next = scanner.Number(Math.Min(ahead, 2));
        var hasHours = scanner.Take(":") is not null;
        if (!hasHours && (digits > 2 || ahead != 2))
            return null;
        var (hour, minute, second) = hasHours ? (first, next, scanner.Number(2)) : (0, first, next);
        if (minute is null || second is null or > 59 || scanner.Nanoseconds() is not { } part || scanner.WithHalf(hour) is not { } ofDay || !scanner.IsAtEnd)
            return null;
        NeedsDate = true;
        var seconds = ofDay * 3600 + minute.Value * 60 + second.Value + part / 1e9;
        // What begins at nought counts from the start; anything else is a time of day.
        if (double.IsNegativeInfinity(_lastClock))
            IsClock = seconds >= 60;
        // Times of day run over midnight: the day goes on.
        if (seconds + _dayShift < _lastClock - HalfDaySeconds)
            _dayShift += DaySeconds;
        _lastClock = seconds + _dayShift;
        return _lastClock;
    }

    private double? Timestamp(string cell)
    {
        if (IsoTimes.Timestamp(cell) is not { } stamp)
            return null;
        if (stamp.Offset is null && !column.IsUtc)
            return context.AtLocal(stamp.Local).ToUnixTimeTicks() / 1e7;
        var offset = stamp.Offset ?? Offset.Zero;
        if (offset != Offset.Zero)
            FileOffsetSeconds ??= offset.Seconds;
        return stamp.Local.WithOffset(offset).ToInstant().ToUnixTimeTicks() / 1e7;
    }
}
