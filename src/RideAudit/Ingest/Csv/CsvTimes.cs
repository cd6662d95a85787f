using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;
using NodaTime.Text;

namespace RideAudit.Ingest.Csv;

/// <summary>Reads a time column: seconds, clock or elapsed times, or ISO 8601 timestamps.</summary>
internal sealed partial class CsvTimes(IngestContext context, LocalDateTime? nameTime)
{
    private static readonly LocalDateTimePattern Local = LocalDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd'T'HH':'mm':'ss;FFFFFFFFF");

    private long _dayShift;
    private double _lastClock = double.NegativeInfinity;

    /// <summary>An offset written in the file's own timestamps; null when there is none.</summary>
    public Offset? FileOffset { get; private set; }

    /// <summary>True when the rows count seconds from the start and say no date.</summary>
    public bool NeedsDate { get; private set; }

    /// <summary>True when clock times were read: the first one is the start's time of day.</summary>
    public bool IsClock { get; private set; }

    /// <summary>Seconds since the Unix epoch, or since the start (or its midnight) when <see cref="NeedsDate"/>; null when the cell is no time.</summary>
    public double? Read(string cell, bool decimalComma)
    {
        cell = cell.Trim();
        var number = decimalComma ? cell.Replace(',', '.') : cell;
        if (double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out var seconds) && double.IsFinite(seconds))
            return Numeric(seconds);
        if (ClockTime().Match(cell) is { Success: true } clock)
            return Clock(clock);
        return Timestamp(cell);
    }

    /// <summary>The start of the riding when <see cref="NeedsDate"/>: from the file's name; null when it has no date.</summary>
    public Instant? Zero(double first) => nameTime is not { } at
        ? null
        : context.AtLocal(IsClock ? at.Date.AtMidnight().PlusSeconds((long)Math.Floor(first)) : at);

    private double? Numeric(double seconds)
    {
        // Seconds since 1970 in any year a bicycle computer existed; anything smaller counts from the start.
        if (seconds is > 631_152_000 and < 32_503_680_000)
            return seconds;
        NeedsDate = true;
        return seconds is >= 0 and < 31_536_000 ? seconds : null;
    }

    private double? Clock(Match clock)
    {
        NeedsDate = true;
        var seconds = double.Parse(clock.Groups["h"].Value, CultureInfo.InvariantCulture) * 3600
            + double.Parse(clock.Groups["m"].Value, CultureInfo.InvariantCulture) * 60
            + double.Parse(clock.Groups["s"].Value.Replace(',', '.'), CultureInfo.InvariantCulture);
        if (double.IsNegativeInfinity(_lastClock))
            IsClock = seconds >= 60;
        // Times of day run over midnight: the day goes on.
        if (seconds + _dayShift < _lastClock - 43_200)
            _dayShift += 86_400;
        _lastClock = seconds + _dayShift;
        return _lastClock;
    }

    private double? Timestamp(string cell)
    {
        if (OffsetDateTimePattern.ExtendedIso.Parse(cell.Replace(' ', 'T')) is { Success: true } withOffset)
        {
            if (!cell.EndsWith('Z'))
                FileOffset ??= withOffset.Value.Offset;
            return withOffset.Value.ToInstant().ToUnixTimeTicks() / 1e7;
        }
        var local = Local.Parse(cell.Replace(' ', 'T'));
        return local.Success ? context.AtLocal(local.Value).ToUnixTimeTicks() / 1e7 : null;
    }

    /// <summary>The date, and time where there is one, in a file's name: 2026-05-05, 20260505-1800, 2026-05-05T18-00-01.</summary>
    public static LocalDateTime? FromName(string name)
    {
        var match = DateInName().Match(name[(name.LastIndexOf('/') + 1)..]);
        if (!match.Success)
            return null;
        int Part(string group) => match.Groups[group].Success ? int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture) : 0;
        var (year, month, day) = (Part("y"), Part("mo"), Part("d"));
        if (month is < 1 or > 12 || day < 1 || day > CalendarSystem.Iso.GetDaysInMonth(year, month))
            return null;
        var (hour, minute, second) = (Part("h"), Part("mi"), Part("s"));
        var time = match.Groups["h"].Success && hour < 24 && minute < 60 && second < 60
            ? new LocalTime(hour, minute, second)
            : LocalTime.Noon;
        return new LocalDate(year, month, day).At(time);
    }

    [GeneratedRegex(@"^(?<h>\d{1,3}):(?<m>[0-5]\d):(?<s>[0-5]\d([.,]\d+)?)$")]
    private static partial Regex ClockTime();

    [GeneratedRegex(@"(?<!\d)(?<y>(19|20)\d\d)[-_.]?(?<mo>\d\d)[-_.]?(?<d>\d\d)(?:[T_ -](?<h>\d\d)[-_.:h]?(?<mi>\d\d)(?:[-_.:m]?(?<s>\d\d))?)?(?!\d)")]
    private static partial Regex DateInName();
}
