using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;
using RideAudit.Ingest.Text;

namespace RideAudit.Ingest.Csv;

/// <summary>Reads a time column: seconds, clock or elapsed times, or ISO 8601 timestamps.</summary>
/// <param name="context">The rider, for the zone of times without offset.</param>
/// <param name="column">The time column, for its unit.</param>
/// <param name="decimalComma">A comma stands for the decimal point.</param>
internal sealed partial class CsvTimes(IngestContext context, CsvHeader.Column column, bool decimalComma)
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
    public double? Read(string cell)
    {
        if (WrittenNumbers.Parse(cell, decimalComma) is { } number)
            return Numeric(number * column.Factor);
        if (Elapsed().Match(cell) is { Success: true } clock)
            return Clock(clock);
        return Timestamp(cell);
    }

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

    private double? Clock(Match clock)
    {
        NeedsDate = true;
        double Part(string group) => clock.Groups[group].Success ? double.Parse(clock.Groups[group].Value.Replace(',', '.'), CultureInfo.InvariantCulture) : 0;
        var hours = Part("h");
        if (clock.Groups["half"].Value is { Length: > 0 } half && hours is >= 1 and <= 12)
            hours = hours % 12 + (half is "p" or "P" ? 12 : 0);
        var seconds = hours * 3600 + Part("m") * 60 + Part("s");
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

    [GeneratedRegex(@"^\s*(?:(?<h>\d{1,3}):)?(?<m>\d{1,2}):(?<s>[0-5]\d(?:[.,]\d+)?)\s*(?:(?<half>[AaPp])\.?[Mm]\.?)?\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex Elapsed();
}
