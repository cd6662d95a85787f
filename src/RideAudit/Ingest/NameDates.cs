using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;

namespace RideAudit.Ingest;

/// <summary>Finds the date, and the time where there is one, in a file's name.</summary>
internal static partial class NameDates
{
    /// <summary>Reads 2026-05-05, 20260505-1800, 2026-05-05T18-00-01, 20260505180001 anywhere in the last part of a path.</summary>
    /// <returns>Null when there is no date; <c>HasTime</c> is false where the name has no time of day, and noon is taken.</returns>
    public static (LocalDateTime At, bool HasTime)? In(string name)
    {
        var match = DateInName().Match(name[(name.LastIndexOf('/') + 1)..]);
        if (!match.Success)
            return null;
        int Part(string group) => match.Groups[group].Success ? int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture) : 0;
        var (year, month, day) = (Part("y"), Part("mo"), Part("d"));
        if (month is < 1 or > 12 || day < 1 || day > CalendarSystem.Iso.GetDaysInMonth(year, month))
            return null;
        var (hour, minute, second) = (Part("h"), Part("mi"), Part("s"));
        var hasTime = match.Groups["h"].Success && hour < 24 && minute < 60 && second < 60;
        return (new LocalDate(year, month, day).At(hasTime ? new LocalTime(hour, minute, second) : LocalTime.Noon), hasTime);
    }

    [GeneratedRegex(@"(?<![0-9])(?<y>(19|20)[0-9][0-9])[-_.]?(?<mo>[0-9][0-9])[-_.]?(?<d>[0-9][0-9])(?:[T_ -]{0,3}(?<h>[0-9][0-9])[-_.:h]?(?<mi>[0-9][0-9])(?:[-_.:m]?(?<s>[0-9][0-9]))?)?(?![0-9])", RegexOptions.CultureInvariant)]
    private static partial Regex DateInName();
}
