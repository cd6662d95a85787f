using NodaTime;
using NodaTime.Text;

namespace RideAudit.Formatting;

public static partial class Shown
{
    private static readonly LocalDatePattern DatePattern = Pattern("d'\u00A0'MMMM");
    private static readonly LocalDatePattern FullDatePattern = Pattern("d'\u00A0'MMMM'\u00A0'uuuu");
    private static readonly LocalDatePattern ShortDatePattern = Pattern("d'\u00A0'MMM");
    private static readonly LocalDatePattern WeekdayPattern = Pattern("dddd");
    private static readonly LocalDatePattern ShortDayPattern = Pattern("ddd'\u00A0'd");
    private static readonly LocalDatePattern DayDatePattern = Pattern("ddd'\u00A0'd'\u00A0'MMMM");
    private static readonly LocalDatePattern DayIsoPattern = Pattern("ddd'\u00A0'uuuu'-'MM'-'dd");
    private static readonly LocalTimePattern MinutePattern = LocalTimePattern.CreateWithInvariantCulture("HH':'mm");
    private static readonly LocalTimePattern SecondPattern = LocalTimePattern.CreateWithInvariantCulture("HH':'mm':'ss");

    /// <summary>A date in a sentence: <c>4 May</c>.</summary>
    public static string Date(LocalDate date) => DatePattern.Format(date);

    /// <summary>A date with its year: <c>4 May 2026</c>.</summary>
    public static string FullDate(LocalDate date) => FullDatePattern.Format(date);

    /// <summary>A date where room is scarce: <c>9 Jun</c>.</summary>
    public static string ShortDate(LocalDate date) => ShortDatePattern.Format(date);

    /// <summary>A date for sorting: <c>2026-05-04</c>.</summary>
    public static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);

    /// <summary>A day of the week: <c>Tuesday</c>.</summary>
    public static string Weekday(LocalDate date) => WeekdayPattern.Format(date);

    /// <summary>A day of a known month: <c>Tue 9</c>.</summary>
    public static string ShortDay(LocalDate date) => ShortDayPattern.Format(date);

    /// <summary>A day and its date: <c>Tue 9 June</c>.</summary>
    public static string DayAndDate(LocalDate date) => DayDatePattern.Format(date);

    /// <summary>A day and its date for sorting: <c>Tue 2026-05-05</c>.</summary>
    public static string DayAndIso(LocalDate date) => DayIsoPattern.Format(date);

    /// <summary>A time of day: <c>18:05</c>.</summary>
    public static string Time(LocalTime time) => MinutePattern.Format(time);

    /// <summary>A time of day to the second: <c>18:05:09</c>.</summary>
    public static string TimeWithSeconds(LocalTime time) => SecondPattern.Format(time);

    /// <summary>A ride's local start: <c>Tue 2026-05-05 18:00</c>.</summary>
    public static string Start(OffsetDateTime start) => DayAndIso(start.Date) + Joint + Time(start.TimeOfDay);

    private static LocalDatePattern Pattern(string text) => LocalDatePattern.CreateWithInvariantCulture(text);
}
