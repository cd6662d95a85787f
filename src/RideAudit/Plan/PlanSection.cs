using System.Collections.Immutable;
using NodaTime;
using RideAudit.Plan.Toml;

namespace RideAudit.Plan;

/// <summary>Reads the rider file's <c>[plan]</c> and <c>[plan.limits]</c>.</summary>
internal static class PlanSection
{
    /// <summary>The weekdays as a rider file writes them.</summary>
    public static IReadOnlyList<(string Word, IsoDayOfWeek Day)> Weekdays { get; } =
    [
        ("monday", IsoDayOfWeek.Monday), ("tuesday", IsoDayOfWeek.Tuesday), ("wednesday", IsoDayOfWeek.Wednesday),
        ("thursday", IsoDayOfWeek.Thursday), ("friday", IsoDayOfWeek.Friday), ("saturday", IsoDayOfWeek.Saturday),
        ("sunday", IsoDayOfWeek.Sunday),
    ];

    private static readonly (string, SplitBy)[] Splits = [("time", SplitBy.Time), ("session", SplitBy.Session)];

    public static TrainingPlan Read(TomlSection section)
    {
        var (lower, upper) = ReadCuts(section);
        var plan = new TrainingPlan
        {
            WeekStartsOn = section.Choice("week_starts_on", Weekdays) ?? IsoDayOfWeek.Monday,
            WeeklyHours = section.Number("weekly_hours", RiderFileRanges.WeeklyHours.Least, RiderFileRanges.WeeklyHours.Most, "h"),
            LowShare = section.Number("low_share", 0.3, 1, "(a share: 0.75 is 75 %)"),
            SplitBy = section.Choice("split_by", Splits) ?? SplitBy.Time,
            LowerBandCutPercent = lower,
            UpperBandCutPercent = upper,
            Starts = section.Date("starts"),
            Weeks = (int?)section.Number("weeks", 1, 104, "weeks", whole: true),
            Days = [.. section.Choices("days", Weekdays).Order()],
        };
        if (section.IsEmptyList("days"))
            section.AddAt(section.PlaceOf("days"), "no day to ride on", "days: at least one weekday, or no such key for any day");
        plan = plan with { LimitOverrides = ReadLimits(section.Table("limits"), section, plan) };
        section.RejectUnknown();
        return plan;
    }

    private static (double Lower, double Upper) ReadCuts(TomlSection section)
    {
        const string Allowed = "band_cuts_percent: two numbers from 30 to 150, the lower first, such as [76, 106]";
        var defaults = new TrainingPlan();
        var items = section.Items("band_cuts_percent", Allowed);
        if (items.Count == 0)
        {
            if (section.IsEmptyList("band_cuts_percent"))
                section.AddAt(section.PlaceOf("band_cuts_percent"), "no two numbers", Allowed);
            return (defaults.LowerBandCutPercent, defaults.UpperBandCutPercent);
        }
        var numbers = items.ConvertAll(TomlSection.NumberOf);
        if (numbers is [{ } lower, { } upper] && lower >= 30 && upper <= 150 && lower < upper)
            return (lower, upper);
        section.Add(items[0], $"[{string.Join(", ", items.Select(TomlWords.Found))}]", Allowed);
        return (defaults.LowerBandCutPercent, defaults.UpperBandCutPercent);
    }

    private static ImmutableDictionary<string, double> ReadLimits(TomlSection? section, TomlSection plan, TrainingPlan read)
    {
        var values = ImmutableDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        if (section is null)
            return values.ToImmutable();
        foreach (var limit in LimitCatalogue.All)
        {
            if (section.Number(limit.Name, limit.Least, limit.Most, limit.Unit, limit.Whole) is { } value)
                values[limit.Name] = value;
        }
        section.RejectUnknown("the name of a limit; the rules command lists them");
        if (section.Has("intended_low_share") && plan.Has("low_share"))
            section.AddAt(section.PlaceOf("intended_low_share"), "the intended low share a second time", "low_share in [plan] or intended_low_share here");
        var limits = values.ToImmutable();
        CheckOrder(section, limits, read);
        return limits;
    }

    private static void CheckOrder(TomlSection section, ImmutableDictionary<string, double> limits, TrainingPlan read)
    {
        var inForce = LimitCatalogue.Override(Limits.For(Tier.Middle, Experience.Regular, null, read), limits);
        foreach (var (lower, upper) in LimitCatalogue.Ordered)
        {
            if (!limits.ContainsKey(lower) && !limits.ContainsKey(upper))
                continue;
            if (LimitCatalogue.ValueOf(inForce, lower) <= LimitCatalogue.ValueOf(inForce, upper))
                continue;
            var written = limits.ContainsKey(lower) ? lower : upper;
            section.AddAt(section.PlaceOf(written), $"{lower} above {upper}", $"{lower} at most {upper} ({TomlRange.Text(LimitCatalogue.ValueOf(inForce, upper) ?? 0)})");
        }
    }
}
