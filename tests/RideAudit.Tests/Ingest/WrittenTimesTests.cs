using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;
using RideAudit.Ingest;
using RideAudit.Ingest.Csv;
using RideAudit.Ingest.Text;

namespace RideAudit.Tests.Ingest;

/// <summary>Timestamps, dates and times of day, held against their grammar written a second time, as regular expressions.</summary>
public sealed partial class WrittenTimesTests
{
    private const int Texts = 200_000;

    [Fact]
    public void Timestamps_are_read_as_their_grammar_says() =>
        Compare("2026-05-05T18:00:01.5+01:00", t => IsoTimes.Timestamp(t), t =>
        {
            var match = Stamp().Match(t);
            if (!match.Success || Date(match) is not { } date || Time(match) is not { } time)
                return ((LocalDateTime, Offset?)?)null;
            var zone = match.Groups["z"].Value.Replace(":", "", StringComparison.Ordinal);
            if (zone.Length == 0)
                return (date + time, null);
            var seconds = zone is "Z" or "z" ? 0 : int.Parse(zone[1..3], CultureInfo.InvariantCulture) * 3600 + (zone.Length > 3 ? int.Parse(zone[3..], CultureInfo.InvariantCulture) * 60 : 0);
            return seconds > 18 * 3600 ? null : (date + time, Offset.FromSeconds(zone[0] == '-' ? -seconds : seconds));
        });

    [Theory]
    [InlineData("2026-05-05")]
    [InlineData("5.05.2026")]
    public void Dates_are_read_as_their_grammar_says(string seed) =>
        Compare(seed, t => IsoTimes.Day(t), t =>
        {
            var match = YearFirst().Match(t) is { Success: true } first ? first : YearLast().Match(t);
            return match.Success ? Date(match) : null;
        });

    [Fact]
    public void Times_of_day_are_read_as_their_grammar_says() =>
        Compare("6:00:59 p.m.", t => IsoTimes.OfDay(t), t => DayTime().Match(t) is { Success: true } match ? Time(match) : null);

    [Fact]
    public void Clock_times_of_a_time_column_are_read_as_their_grammar_says() =>
        Compare("1:02:03.5 PM", t => Rounded(new CsvTimes(new IngestContext(Reading.Rider, DateTimeZone.Utc), new CsvHeader.Column(0, "time", CsvChannel.Time, 1, false), false).Read(t)), t =>
        {
            if (Clock().Match(t) is not { Success: true } match)
                return WrittenNumbers.Parse(t, false);
            var hours = Number(match, "h");
            var half = match.Groups["half"].Value;
            if (half.Length > 0 && hours is >= 1 and <= 12)
                hours = hours % 12 + (half is "p" or "P" ? 12 : 0);
            return Rounded(hours * 3600 + Number(match, "m") * 60 + double.Parse(match.Groups["s"].Value.Replace(',', '.'), CultureInfo.InvariantCulture));
        });

    /// <summary>Digits of other scripts are digits to a regular expression and no number to anything that reads numbers.</summary>
    [Theory]
    [InlineData("2026-05-05.csv", "timestamp,power\n٢٠٢٦-٠٥-٠٥T١٨:٠٠:٠٠Z,200\n")]
    [InlineData("2026-05-05.csv", "time,power\n١:٠٠:00,200\n")]
    [InlineData("2026-05-05.csv", "time,power\n0,٢٠٠\n1,٢٠١\n")]
    [InlineData("20٢٦-٠٥-٠٥.csv", "seconds,power\n0,200\n1,200\n")]
    [InlineData("log.csv", "date,duration\n٢٠٢٦-٠٥-٠٥,60\n2026-05-06,١:٣٠\n")]
    [InlineData("plan.csv", "date,session,duration\n٢٠٢٦-٠٥-٠٥,easy,60\n٠٥.٠٥.٢٠٢٦,easy,60\n")]
    [InlineData("note-٢٠٢٦-٠٥-٠٥.md", "٢٠٢٦-٠٥-٠٥\n\nRest.\n")]
    public void Digits_of_other_scripts_end_in_a_sentence(string name, string text) =>
        Assert.DoesNotContain(Reading.Of(name, text).Notices, n => n.Sentence.Contains("should not happen", StringComparison.Ordinal));

    /// <summary>Changes a text a few characters at a time, so that many stay nearly right.</summary>
    private static void Compare<T>(string seed, Func<string, T> read, Func<string, T> grammar)
    {
        const string Letters = "0123456789012345678901234567890::::--//..,TtZz++ _apmAPM";
        var random = new Random(20261129);
        var understood = 0;
        for (var i = 0; i < Texts; i++)
        {
            var text = seed;
            for (var change = random.Next(5); change > 0; change--)
            {
                var at = random.Next(text.Length + 1);
                text = random.Next(3) switch
                {
                    0 => text.Insert(at, Letters[random.Next(Letters.Length)].ToString()),
                    1 => text.Remove(Math.Min(at, text.Length), at < text.Length ? 1 : 0),
                    _ => at < text.Length ? text.Remove(at, 1).Insert(at, Letters[random.Next(Letters.Length)].ToString()) : text,
                };
            }
            var wanted = grammar(text);
            understood += wanted is null ? 0 : 1;
            Assert.True(EqualityComparer<T>.Default.Equals(wanted, read(text)), $"{text}: {wanted} by the grammar, read as {read(text)}");
        }
        Assert.InRange(understood, Texts / 20, Texts - Texts / 20);
    }

    private static double? Rounded(double? seconds) => seconds is { } s ? Math.Round(s, 6) : null;

    private static LocalDate? Date(Match match)
    {
        var (year, month, day) = (Number(match, "y"), Number(match, "mo"), Number(match, "d"));
        return year >= 1900 && month is >= 1 and <= 12 && day >= 1 && day <= CalendarSystem.Iso.GetDaysInMonth(year, month) ? new LocalDate(year, month, day) : null;
    }

    private static LocalTime? Time(Match match)
    {
        var (hour, minute, second) = (Number(match, "h"), Number(match, "mi"), Number(match, "s"));
        var half = match.Groups["half"].Value;
        if (half.Length > 0 && hour is >= 1 and <= 12)
            hour = hour % 12 + (half is "p" or "P" ? 12 : 0);
        if (hour > 23 || minute > 59 || second > 60)
            return null;
        var fraction = match.Groups["f"].Value;
        return new LocalTime(hour, minute, Math.Min(second, 59)).PlusNanoseconds(fraction.Length == 0 ? 0 : long.Parse(fraction.PadRight(9, '0'), CultureInfo.InvariantCulture));
    }

    private static int Number(Match match, string group) => match.Groups[group].Success ? int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex(@"^\s*(?<y>\d{4})[-/.]?(?<mo>\d\d)[-/.]?(?<d>\d\d)(?:[Tt_]|\s+)(?<h>\d\d?):?(?<mi>\d\d)(?::?(?<s>\d\d)(?:[.,](?<f>\d{1,9})\d*)?)?\s*(?<z>[Zz]|[+-]\d\d(?::?\d\d)?)?\s*$")]
    private static partial Regex Stamp();

    [GeneratedRegex(@"^\s*(?<y>\d{4})(?<sep>[-/.]?)(?<mo>\d\d)\k<sep>(?<d>\d\d)\s*$")]
    private static partial Regex YearFirst();

    [GeneratedRegex(@"^\s*(?<d>\d\d?)\.(?<mo>\d\d?)\.(?<y>\d{4})\s*$")]
    private static partial Regex YearLast();

    [GeneratedRegex(@"^\s*(?:(?<h>\d{1,3}):)?(?<m>\d{1,2}):(?<s>[0-5]\d(?:[.,]\d+)?)\s*(?:(?<half>[AaPp])\.?[Mm]\.?)?\s*$")]
    private static partial Regex Clock();

    [GeneratedRegex(@"^\s*(?<h>\d\d?):(?<mi>\d\d)(?::(?<s>\d\d))?\s*(?:(?<half>[AaPp])\.?[Mm]\.?)?\s*$")]
    private static partial Regex DayTime();
}
