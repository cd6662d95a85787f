using System.Collections.Immutable;
using NodaTime;

namespace RideAudit.Plan;

/// <summary>The plan section of a rider file; everything has a default.</summary>
public sealed record TrainingPlan
{
    /// <summary>The week's first day.</summary>
    public IsoDayOfWeek WeekStartsOn { get; init; } = IsoDayOfWeek.Monday;

    /// <summary>Planned hours a week; null: the mean of up to six weeks before the judged one.</summary>
    public double? WeeklyHours { get; init; }

    /// <summary>Intended low share by time, 0 to 1; null: the tier's.</summary>
    public double? LowShare { get; init; }

    /// <summary>Which count the split is judged by.</summary>
    public SplitBy SplitBy { get; init; }

    /// <summary>Lower band cut, % of threshold power.</summary>
    public double LowerBandCutPercent { get; init; } = 76;

    /// <summary>Upper band cut, % of threshold power.</summary>
    public double UpperBandCutPercent { get; init; } = 106;

    /// <summary>First day of a plan with a length, for "week 10 of 16"; null without one.</summary>
    public LocalDate? Starts { get; init; }

    /// <summary>The plan's length, weeks; null without one.</summary>
    public int? Weeks { get; init; }

    /// <summary>Days the rider can ride; empty: any.</summary>
    public ImmutableArray<IsoDayOfWeek> Days { get; init; } = [];

    /// <summary>Limits overridden by name.</summary>
    public ImmutableDictionary<string, double> LimitOverrides { get; init; } = ImmutableDictionary<string, double>.Empty;
}
