using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;

namespace RideAudit.Ingest.Text;

/// <summary>Reads timestamps as ISO 8601 writes them, and dates.</summary>
internal static partial class IsoTimes
{
    /// <summary>2026-05-05T18:00:01.5+01:00, with a blank for the T, without seconds, without separators, with Z or no offset.</summary>
    /// <returns>The local time, and the offset where one is written; null when the text is no timestamp.</returns>
    public static (LocalDateTime Local, Offset? Offset)? Timestamp(string text)
    {
        var match = Stamp().Match(text);
        if (!match.Success || Date(match) is not { } date || Time(match) is not { } time)
            return null;
        var (given, offset) = OffsetOf(match.Groups["z"].Value);
        return given && offset is null ? null : (date + time, offset);
    }

    /// <summary>2026-05-05, 2026/05/05, 20260505 or 05.05.2026; null otherwise. Day and month between slashes are told apart by no one.</summary>
    public static LocalDate? Day(string text)
    {
        var match = YearFirst().Match(text);
        if (!match.Success)
            match = YearLast().Match(text);
        return match.Success ? Date(match) : null;
    }

    /// <summary>18:00, 18:00:01, 6:00 PM; null otherwise.</summary>
    public static LocalTime? OfDay(string text)
    {
        var match = DayTime().Match(text);
        return match.Success ? Time(match) : null;
    }

    private static LocalDate? Date(Match match)
    {
        var (year, month, day) = (Number(match, "y"), Number(match, "mo"), Number(match, "d"));
        return year >= 1900 && month is >= 1 and <= 12 && day >= 1 && day <= CalendarSystem.Iso.GetDaysInMonth(year, month)
            ? new LocalDate(year, month, day)
            : null;
    }

    private static LocalTime? Time(Match match)
    {
        var (hour, minute, second) = (Number(match, "h"), Number(match, "mi"), Number(match, "s"));
        var half = match.Groups["half"].Value;
        if (half.Length > 0 && hour is >= 1 and <= 12)
            hour = hour % 12 + (half is "p" or "P" ? 12 : 0);
        if (hour > 23 || minute > 59 || second > 60)
            return null;
        // A leap second is written as 60; the clock of a ride has none.
        var time = new LocalTime(hour, minute, Math.Min(second, 59));
        var fraction = match.Groups["f"].Value;
        return fraction.Length == 0 ? time : time.PlusNanoseconds(long.Parse(fraction.PadRight(9, '0'), CultureInfo.InvariantCulture));
    }

    private static (bool Given, Offset? Offset) OffsetOf(string text)
    {
        if (text.Length == 0)
            return (false, null);
        if (text is "Z" or "z")
            return (true, Offset.Zero);
        var digits = text[1..].Replace(":", "", StringComparison.Ordinal);
        var hours = int.Parse(digits[..2], CultureInfo.InvariantCulture);
        var minutes = digits.Length > 2 ? int.Parse(digits[2..], CultureInfo.InvariantCulture) : 0;
        var seconds = hours * 3600 + minutes * 60;
        return (true, seconds <= 18 * 3600 ? Offset.FromSeconds(text[0] == '-' ? -seconds : seconds) : null);
    }

    private static int Number(Match match, string group) =>
        match.Groups[group].Success ? int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex(@"^\s*(?<y>\d{4})[-/.]?(?<mo>\d\d)[-/.]?(?<d>\d\d)(?:[Tt_]|\s+)(?<h>\d\d?):?(?<mi>\d\d)(?::?(?<s>\d\d)(?:[.,](?<f>\d{1,9})\d*)?)?\s*(?<z>[Zz]|[+-]\d\d(?::?\d\d)?)?\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex Stamp();

    [GeneratedRegex(@"^\s*(?<y>\d{4})(?<sep>[-/.]?)(?<mo>\d\d)\k<sep>(?<d>\d\d)\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex YearFirst();

    [GeneratedRegex(@"^\s*(?<d>\d\d?)\.(?<mo>\d\d?)\.(?<y>\d{4})\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex YearLast();

    [GeneratedRegex(@"^\s*(?<h>\d\d?):(?<mi>\d\d)(?::(?<s>\d\d))?\s*(?:(?<half>[AaPp])\.?[Mm]\.?)?\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex DayTime();
}
