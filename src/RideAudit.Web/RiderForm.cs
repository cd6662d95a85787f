using System.Collections.Immutable;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using RideAudit.Ingest;
using RideAudit.Plan;

namespace RideAudit.Web;

/// <summary>The rider's form: what the page asks, and what it got.</summary>
/// <remarks>A question that is not in the answers is not asked about; an empty answer takes the value out.</remarks>
internal static class RiderForm
{
    /// <summary>The form's values.</summary>
    /// <param name="rider">The rider file.</param>
    /// <param name="firstRide">What a first threshold is in force from.</param>
    /// <param name="notices">What happened to the files: CSV files whose columns were not understood among them.</param>
    public static string Write(RiderText rider, LocalDate firstRide, IEnumerable<FileNotice> notices)
    {
        var read = rider.Rider ?? new Plan.Rider();
        var latest = read.Thresholds.LastOrDefault();
        var state = new State(
            rider.IsNone,
            [.. rider.MistakesInWords()],
            new Dictionary<string, string?>
            {
                ["label"] = read.Label,
                ["time_zone"] = read.TimeZone?.Id,
                ["sex"] = Word(read.Sex),
                ["mass_kg"] = Number(read.MassKg),
                ["experience"] = Word(read.Experience),
                ["threshold_from"] = Iso(latest?.From ?? firstRide),
                ["power_w"] = Number(latest?.Power?.Value),
                ["heart_rate_bpm"] = Number(latest?.HeartRateBpm),
                ["rest_bpm"] = Number(read.RestHeartRateBpm),
                ["max_bpm"] = Number(read.MaxHeartRateBpm),
                ["week_starts_on"] = Word(read.Plan.WeekStartsOn),
                ["weekly_hours"] = Number(read.Plan.WeeklyHours),
                ["days"] = string.Join(' ', read.Plan.Days.Select(Word)),
            },
            [.. read.Exceptions.Select(e => new DaysOut(Iso(e.From), Iso(e.To), Word(e.Kind)))],
            [.. Enum.GetValues<ExceptionKind>().Select(Word)],
            [.. read.Thresholds.Select(t => new Dated(Iso(t.From), Number(t.Power?.Value), Number(t.HeartRateBpm)))],
            [.. RiderFileReader.CsvChannels.Select(c => new Column(c, read.CsvColumns.GetValueOrDefault(c, "")))],
            [.. notices.Where(n => !n.Headers.IsEmpty).Select(n => new Columns(n.File, [.. n.Headers]))]);
        return JsonSerializer.Serialize(state, PageJson.Default.Rider);
    }

    /// <summary>The form's answers as changes of the rider file.</summary>
    public static RiderFileEdit Read(string answers)
    {
        var given = JsonSerializer.Deserialize(answers, PageJson.Default.Answers) ?? new Answers([], null, null);
        var values = given.Values;
        return new RiderFileEdit
        {
            Label = Text(values, "label"),
            TimeZone = Text(values, "time_zone"),
            Sex = Choice<Sex>(values, "sex"),
            MassKg = Number(values, "mass_kg"),
            Experience = Choice<Experience>(values, "experience"),
            ThresholdFrom = values.TryGetValue("threshold_from", out var from) ? Date(from) : null,
            ThresholdPowerW = Number(values, "power_w"),
            ThresholdHeartRateBpm = Number(values, "heart_rate_bpm"),
            RestHeartRateBpm = Number(values, "rest_bpm"),
            MaxHeartRateBpm = Number(values, "max_bpm"),
            WeekStartsOn = Choice<IsoDayOfWeek>(values, "week_starts_on"),
            WeeklyHours = Number(values, "weekly_hours"),
            Days = values.TryGetValue("days", out var days)
                ? [.. days.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(d => Enum.Parse<IsoDayOfWeek>(d, ignoreCase: true))]
                : null,
            CsvColumns = (given.Columns ?? []).ToImmutableSortedDictionary(c => c.Key, c => Text(given.Columns!, c.Key)),
            Exceptions = given.Exceptions is { } exceptions ? [.. exceptions.Select(Exception).OfType<PlanException>()] : null,
        };
    }

    private static PlanException? Exception(DaysOut row) =>
        Date(row.From) is { } from && Enum.TryParse<ExceptionKind>(row.Kind, ignoreCase: true, out var kind)
            ? new PlanException(from, Date(row.To) ?? from, kind)
            : null;

    private static RiderFileEdit.Answer<string> Text(Dictionary<string, string> values, string key) =>
        !values.TryGetValue(key, out var text) ? default
            : string.IsNullOrWhiteSpace(text) ? RiderFileEdit.Answer<string>.Nothing
            : text.Trim();

    private static RiderFileEdit.Answer<double?> Number(Dictionary<string, string> values, string key) =>
        !values.TryGetValue(key, out var text) ? default
            : double.TryParse(text.Replace(',', '.'), System.Globalization.CultureInfo.InvariantCulture, out var number) ? (double?)number
            : RiderFileEdit.Answer<double?>.Nothing;

    private static RiderFileEdit.Answer<T?> Choice<T>(Dictionary<string, string> values, string key)
        where T : struct, Enum =>
        !values.TryGetValue(key, out var text) ? default
            : Enum.TryParse<T>(text, ignoreCase: true, out var choice) ? (T?)choice
            : RiderFileEdit.Answer<T?>.Nothing;

    private static LocalDate? Date(string? text) => LocalDatePattern.Iso.Parse(text ?? "") is { Success: true, Value: var date } ? date : null;

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);

    private static string Word<T>(T value)
        where T : struct, Enum => value.ToString().ToLowerInvariant();

    private static string? Number(double? value) => value?.ToString("0.####", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>What the page shows.</summary>
    internal sealed record State(
        bool IsNew, string[] Mistakes, Dictionary<string, string?> Values, DaysOut[] Exceptions, string[] ExceptionKinds, Dated[] Thresholds,
        Column[] CsvColumns, Columns[] CsvFiles);

    /// <summary>What the page sends.</summary>
    internal sealed record Answers(Dictionary<string, string> Values, DaysOut[]? Exceptions, Dictionary<string, string>? Columns);

    /// <summary>One row of days out.</summary>
    internal sealed record DaysOut(string From, string? To, string Kind);

    /// <summary>The header that a channel is known by; empty where none is named.</summary>
    internal sealed record Column(string Channel, string Header);

    /// <summary>The columns of a CSV file that were not understood.</summary>
    internal sealed record Columns(string File, string[] Headers);

    /// <summary>One dated threshold.</summary>
    internal sealed record Dated(string From, string? PowerW, string? HeartRateBpm);
}
