using NodaTime;

namespace RideAudit.Ingest.Text;

/// <summary>Reads timestamps as ISO 8601 writes them, and dates.</summary>
internal static class IsoTimes
{
    private const int LargestOffsetSeconds = 18 * 3600;

    /// <summary>2026-05-05T18:00:01.5+01:00, with a blank for the T, without seconds, without separators, with Z or no offset.</summary>
    /// <returns>The local time, and the offset where one is written; null when the text is no timestamp.</returns>
    public static (LocalDateTime Local, Offset? Offset)? Timestamp(string text)
    {
        var scanner = new TimeScanner(text);
        var year = scanner.Number(4);
        scanner.Take("-/.");
        var month = scanner.Number(2);
        scanner.Take("-/.");
        if (Date(year, month, scanner.Number(2)) is not { } date || (scanner.Take("Tt_") is null && !scanner.TakeBlanks()) || Time(ref scanner) is not { } time)
            return null;
        scanner.TakeBlanks();
        if (scanner.IsAtEnd)
            return (date + time, null);
        return Zone(ref scanner) is { } offset && scanner.IsAtEnd ? (date + time, offset) : null;
    }

    /// <summary>2026-05-05, 2026/05/05, 20260505 or 05.05.2026; null otherwise. Day and month between slashes are told apart by no one.</summary>
    public static LocalDate? Day(string text)
    {
        var scanner = new TimeScanner(text);
        if (scanner.DigitsAhead < 4)
        {
            var (first, second) = (UpToTwo(ref scanner, "."), UpToTwo(ref scanner, "."));
            var last = scanner.Number(4);
            return scanner.IsAtEnd ? Date(last, second, first) : null;
        }
        var year = scanner.Number(4);
        var separator = scanner.Take("-/.");
        var month = scanner.Number(2);
        var isSame = scanner.Take("-/.") == separator;
        var day = scanner.Number(2);
        return isSame && scanner.IsAtEnd ? Date(year, month, day) : null;
    }

    /// <summary>18:00, 18:00:01, 6:00 PM; null otherwise.</summary>
    public static LocalTime? OfDay(string text)
    {
        var scanner = new TimeScanner(text);
        if (UpToTwo(ref scanner, ":") is not { } hour || scanner.Number(2) is not { } minute)
            return null;
        int? second = 0;
        if (scanner.Take(":") is not null)
            second = scanner.Number(2);
        return scanner.WithHalf(hour) is { } ofDay && scanner.IsAtEnd ? Time(ofDay, minute, second) : null;
    }

    private static int? UpToTwo(ref TimeScanner scanner, string end) =>
        scanner.Number(Math.Min(scanner.DigitsAhead, 2)) is { } number && scanner.Take(end) is not null ? number : null;

    private static LocalDate? Date(int? year, int? month, int? day) =>
        year is >= 1900 and var y && month is >= 1 and <= 12 and var m && day is >= 1 and var d && d <= CalendarSystem.Iso.GetDaysInMonth(y, m)
            ? new LocalDate(y, m, d)
            : null;

    /// <summary>Hours of one or two digits, minutes, and perhaps seconds with a part of one; without colons an odd number of digits begins with an hour of one.</summary>
    private static LocalTime? Time(ref TimeScanner scanner)
    {
        var digits = scanner.DigitsAhead;
        var hour = scanner.Number(digits > 2 ? 2 - digits % 2 : digits);
        scanner.Take(":");
        var minute = scanner.Number(2);
        var hasSeconds = scanner.Take(":") is not null || scanner.DigitsAhead > 0;
        return Time(hour, minute, hasSeconds ? scanner.Number(2) : 0) is { } time && (hasSeconds ? scanner.Nanoseconds() : 0) is { } nanoseconds
            ? time.PlusNanoseconds(nanoseconds)
            : null;
    }

    /// <summary>A leap second is written as 60; the clock of a ride has none.</summary>
    private static LocalTime? Time(int? hour, int? minute, int? second) =>
        hour is <= 23 and var h && minute is <= 59 and var m && second is <= 60 and var s ? new LocalTime(h, m, Math.Min(s, 59)) : null;

    private static Offset? Zone(ref TimeScanner scanner)
    {
        if (scanner.Take("Zz") is not null)
            return Offset.Zero;
        var sign = scanner.Take("+-");
        if (sign is null || scanner.Number(2) is not { } hours)
            return null;
        var hasMinutes = scanner.Take(":") is not null || scanner.DigitsAhead > 0;
        if ((hasMinutes ? scanner.Number(2) : 0) is not { } minutes || hours * 3600 + minutes * 60 is var seconds && seconds > LargestOffsetSeconds)
            return null;
        return Offset.FromSeconds(sign == '-' ? -seconds : seconds);
    }
}
