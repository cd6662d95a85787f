using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;

namespace RideAudit.Plan.Table;

/// <summary>Dates of one column: ISO 8601, or as spreadsheets save them again.</summary>
/// <remarks>
/// Day and month with slashes or hyphens may stand either way round: the whole column decides, and where it does not,
/// a semicolon between the cells, which goes with the day first. What stays open is not guessed.
/// </remarks>
internal sealed partial class PlanDates
{
    private readonly bool _dayFirst;
    private readonly bool _monthFirst;

    private PlanDates(bool dayFirst, bool monthFirst) => (_dayFirst, _monthFirst) = (dayFirst, monthFirst);

    public static PlanDates Of(IEnumerable<string> column, char separator)
    {
        var parts = column.Select(c => Local().Match(c)).Where(m => m.Success && m.Groups["sep"].Value != ".").ToList();
        var dayFirst = parts.TrueForAll(m => Date(m, dayFirst: true) is not null);
        var monthFirst = parts.TrueForAll(m => Date(m, dayFirst: false) is not null);
        return dayFirst && monthFirst && separator == ';' ? new PlanDates(true, false) : new PlanDates(dayFirst, monthFirst);
    }

    /// <summary>The date; null when the cell is none, or could be two.</summary>
    public LocalDate? Read(string cell)
    {
        var iso = Iso().Match(cell);
        if (iso.Success)
            return Valid(Number(iso, "y"), Number(iso, "m"), Number(iso, "d"));
        var local = Local().Match(cell);
        if (!local.Success)
            return null;
        if (local.Groups["sep"].Value == ".")
            return Date(local, dayFirst: true);
        return _dayFirst == _monthFirst ? null : Date(local, _dayFirst);
    }

    /// <summary>The cell is a date that could be two.</summary>
    public bool IsOpen(string cell) => _dayFirst && _monthFirst && Local().Match(cell) is { Success: true } match && match.Groups["sep"].Value != ".";

    private static LocalDate? Date(Match match, bool dayFirst)
    {
        var year = Number(match, "y");
        var (first, second) = (Number(match, "a"), Number(match, "b"));
        return Valid(year < 100 ? 2000 + year : year, dayFirst ? second : first, dayFirst ? first : second);
    }

    private static LocalDate? Valid(int year, int month, int day) =>
        year is >= 1990 and <= 2199 && month is >= 1 and <= 12 && day >= 1 && day <= CalendarSystem.Iso.GetDaysInMonth(year, month)
            ? new LocalDate(year, month, day)
            : null;

    private static int Number(Match match, string group) => int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?<y>[0-9]{4})([-/.]?)(?<m>[0-9]{2})\1(?<d>[0-9]{2})(?:[T ]0{1,2}:00(?::00)?)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Iso();

    [GeneratedRegex(@"^(?<a>[0-9]{1,2})(?<sep>[-/.]) ?(?<b>[0-9]{1,2})\k<sep> ?(?<y>[0-9]{4}|[0-9]{2})$", RegexOptions.CultureInvariant)]
    private static partial Regex Local();
}
