using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

/// <summary>A week of testdata/weeks: a plan, seven days, the weeks before it, and every verdict that is not kept.</summary>
internal sealed partial class WorkedWeek
{
    private static readonly string[] DayNames = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

    private readonly Dictionary<string, string> _settings = [];
    private readonly Dictionary<string, List<string>> _blocks = [];

    private WorkedWeek(string text)
    {
        string? block = null;
        foreach (var line in text.Split('\n').Select(l => l.Split('#')[0].TrimEnd()).Where(l => l.Length > 0))
        {
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            if (line is "this week" or "usual week" or "verdicts" or "smallest change")
                _blocks[block = line] = [];
            else if (block is null && colon > 0)
                _settings[line[..colon].Trim()] = line[(colon + 1)..].Trim();
            else if (block is not null)
                _blocks[block].Add(line.Trim());
            else
                throw new FormatException($"A setting is written name: value, not {line}.");
        }
    }

    public PlanInForce Plan => Sample.Plan(Hours, Experience, TrainingPlan, [.. Exceptions()]);

    /// <summary>Expected verdicts by rule; every rule not named is expected to be kept.</summary>
    public ImmutableDictionary<string, string> Verdicts => _blocks.GetValueOrDefault("verdicts", [])
        .Select(l => l.Split(' ', 2, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        .ToImmutableDictionary(p => p[0], p => p[1]);

    /// <summary>The expected sentence of the smallest change; null when the file says nothing of it.</summary>
    public string? SmallestChange => _blocks.TryGetValue("smallest change", out var lines) ? string.Join(' ', lines) : null;

    public static WorkedWeek Read(string path) => new(File.ReadAllText(path));

    public WeekUnderReview Review()
    {
        var plan = Plan;
        var usual = _blocks.GetValueOrDefault("usual week") ?? _blocks["this week"];
        var before = _settings.GetValueOrDefault("before", "").Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var rides = new List<RideFigures>();
        for (var i = 0; i < before.Length; i++)
        {
            var start = Sample.Monday.PlusDays(-7 * (before.Length - i));
            rides.AddRange(RidesOf(usual, start, Number(before[i]) / 100));
        }
        rides.AddRange(RidesOf(_blocks["this week"], Sample.Monday, 1));
        var days = _settings.TryGetValue("days so far", out var so) ? int.Parse(so, CultureInfo.InvariantCulture) : 7;
        return Sample.Review(rides, plan, Sample.Monday, days);
    }

    private double? Hours => _settings.TryGetValue("hours", out var hours) ? Number(hours) : null;

    private Experience Experience => Enum.Parse<Experience>(_settings.GetValueOrDefault("experience", "regular"), ignoreCase: true);

    private TrainingPlan TrainingPlan => new()
    {
        SplitBy = Enum.Parse<SplitBy>(_settings.GetValueOrDefault("split", "time"), ignoreCase: true),
        Days = [.. _settings.GetValueOrDefault("days", "").Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(d => (IsoDayOfWeek)(Array.IndexOf(DayNames, d) + 1))],
        LimitOverrides = _settings.GetValueOrDefault("limits", "").Split(',', StringSplitOptions.RemoveEmptyEntries)
            .Select(p => p.Split('=')).ToImmutableDictionary(p => p[0].Trim(), p => Number(p[1].Trim())),
    };

    private IEnumerable<PlanException> Exceptions()
    {
        if (!_settings.TryGetValue("exception", out var text))
            yield break;
        var parts = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        yield return new PlanException(DayOf(parts[1]), DayOf(parts[2]), Enum.Parse<ExceptionKind>(parts[0], ignoreCase: true));
    }

    /// <summary>A day of the judged week by its name, any other by its distance from Monday.</summary>
    private static LocalDate DayOf(string text) =>
        Sample.Monday.PlusDays(Array.IndexOf(DayNames, text) is >= 0 and var day ? day : int.Parse(text, CultureInfo.InvariantCulture));

    private static IEnumerable<RideFigures> RidesOf(List<string> lines, LocalDate start, double scale)
    {
        foreach (var line in lines)
        {
            var day = Array.IndexOf(DayNames, line[..3]);
            if (day < 0)
                throw new FormatException($"A day begins with Mon to Sun, not {line}.");
            if (line[3..].Trim() is not "rest" and var rides)
            {
                foreach (var ride in rides.Split(';'))
                    yield return RideOf(ride.Trim(), start.PlusDays(day), scale);
            }
        }
    }

    private static RideFigures RideOf(string text, LocalDate date, double scale)
    {
        var match = RidePattern().Match(text);
        if (!match.Success)
            throw new FormatException($"A ride is written 18:00 high 60 min, not {text}.");
        var kind = Enum.Parse<RideKind>(match.Groups["kind"].Value, ignoreCase: true);
        var minutes = scale * (60 * Amount(match, "hours") + Amount(match, "minutes"));
        double? low = match.Groups["low"].Success ? Amount(match, "low") / 100 : null;
        var ride = Sample.Ride(date, kind, minutes, (int)Amount(match, "hour"), (int)Amount(match, "minute"), low);
        foreach (var word in match.Groups["word"].Captures.Select(c => c.Value.Trim()))
            ride = With(ride, word);
        return match.Groups["stress"].Success ? ride with { Stress = scale * Amount(match, "stress") } : ride;
    }

    private static RideFigures With(RideFigures ride, string word) => word switch
    {
        "heart-rate" => ride with
        {
            MeasuredBy = MeasureSource.HeartRate,
            StressFrom = StressSource.HeartRate,
            Threshold = null,
            IntensityRatio = null,
            NormalisedPower = null,
        },
        "estimate" => ride with { Threshold = new ThresholdInForce(new Watts(250), ThresholdSource.Estimate, 20, 80) },
        "thin" => ride with { Threshold = new ThresholdInForce(new Watts(250), ThresholdSource.Estimate, 3, 10) },
        "unknown-stress" => ride with { Stress = null, StressFrom = StressSource.Unknown },
        _ when word.StartsWith("ratio=", StringComparison.Ordinal) => ride with { IntensityRatio = Number(word[6..]) / 100 },
        _ when word.StartsWith("best20=", StringComparison.Ordinal) => ride with { Bests = [new BestPower(1200, Number(word[7..]), 300)] },
        _ => throw new FormatException($"There is no ride word {word}."),
    };

    private static double Amount(Match match, string group) => match.Groups[group].Success ? Number(match.Groups[group].Value) : 0;

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"^(?<hour>\d\d):(?<minute>\d\d) +(?<kind>\w+)(?: +(?<hours>\d+) h)?(?: +(?<minutes>\d+) min)?(?:, low (?<low>\d+) %)?(?:, stress (?<stress>\d+))?(?:,(?<word> [a-z0-9=-]+))*$")]
    private static partial Regex RidePattern();
}
