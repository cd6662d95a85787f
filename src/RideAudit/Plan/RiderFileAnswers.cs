using System.Collections.Immutable;
using NodaTime;

namespace RideAudit.Plan;

/// <summary>What a new rider file is to say; everything unanswered is written as a comment to fill in.</summary>
public sealed record RiderFileAnswers
{
    /// <summary>Printed on the review.</summary>
    public string Label { get; init; } = "Rider";

    /// <summary>IANA time zone; null: not answered.</summary>
    public string? TimeZone { get; init; }

    /// <summary>Only used for heart-rate load.</summary>
    public Sex Sex { get; init; }

    /// <summary>Body mass, kg; null: not answered.</summary>
    public double? MassKg { get; init; }

    /// <summary>Riding experience.</summary>
    public Experience Experience { get; init; } = Experience.Regular;

    /// <summary>The date the threshold is in force from.</summary>
    public required LocalDate ThresholdFrom { get; init; }

    /// <summary>Threshold power (FTP), W; null: not answered.</summary>
    public double? ThresholdPowerW { get; init; }

    /// <summary>Threshold heart rate, bpm; null: not answered.</summary>
    public double? ThresholdHeartRateBpm { get; init; }

    /// <summary>Resting heart rate, bpm; null: not answered.</summary>
    public double? RestHeartRateBpm { get; init; }

    /// <summary>Highest heart rate, bpm; null: not answered.</summary>
    public double? MaxHeartRateBpm { get; init; }

    /// <summary>Planned hours a week; null: not answered.</summary>
    public double? WeeklyHours { get; init; }

    /// <summary>The week's first day.</summary>
    public IsoDayOfWeek WeekStartsOn { get; init; } = IsoDayOfWeek.Monday;

    /// <summary>Days the rider can ride; empty: any.</summary>
    public ImmutableArray<IsoDayOfWeek> Days { get; init; } = [];
}
