using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Rules;
using RideAudit.Rules.Changes;

namespace RideAudit.Testing.Samples;

/// <summary>What a sample review is made from.</summary>
public sealed record ReviewSpec
{
    public string Label { get; init; } = "Rider A";

    public string? Tier { get; init; } = "middle";

    public double? PlannedHours { get; init; } = 6.5;

    public bool PlannedFromHistory { get; init; }

    public LocalDate Start { get; init; } = new(2026, 6, 8);

    public bool Finished { get; init; } = true;

    public string? Exception { get; init; }

    public int HistoryWeeks { get; init; } = 16;

    public bool SettlingIn { get; init; }

    public double? LowShare { get; init; } = 0.75;

    public double? Tolerance { get; init; } = 0.07;

    public double? LongRideHours { get; init; } = 2.5;

    public int? PlanWeek { get; init; } = 10;

    public int? PlanWeeks { get; init; } = 16;

    /// <summary>Hours of other activity on a day, 0 first.</summary>
    public IReadOnlyDictionary<int, double> OtherHours { get; init; } = new Dictionary<int, double>();

    /// <summary>Kinds of earlier weeks, by how many weeks ago.</summary>
    public IReadOnlyDictionary<int, string> PastExceptions { get; init; } = new Dictionary<int, string>();

    public ThresholdsEntry? Thresholds { get; init; }

    public ImmutableArray<RideSpec> Rides { get; init; } = [];

    public ImmutableArray<Finding> Findings { get; init; } = SampleFindings.With();

    public SmallestChange? Change { get; init; }

    public ImmutableArray<NoticeEntry> Notices { get; init; } = [];

    public string Headline { get; init; } = "A week as planned.";

    public string? Subline { get; init; }

    public ImmutableArray<ChangeAdvice> ToChange { get; init; } = [];

    public ImmutableArray<string> Held { get; init; } = ["spacing", "hard-day count", "rest days", "long ride", "intensity split"];

    public string? Note { get; init; }
}
