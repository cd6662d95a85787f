using System.Collections.Immutable;
using NodaTime;
using RideAudit.Plan;

namespace RideAudit.Cli.Options;

/// <summary>What <c>new-rider</c> was told; what is null was not said.</summary>
internal sealed record NewRiderArguments
{
    /// <summary>The file as typed.</summary>
    public required string File { get; init; }

    /// <summary>Replace a file that is there.</summary>
    public bool Overwrite { get; init; }

    /// <summary>Ask nothing, even on a terminal.</summary>
    public bool NoQuestions { get; init; }

    /// <summary>The label.</summary>
    public string? Label { get; init; }

    /// <summary>The time zone.</summary>
    public string? TimeZone { get; init; }

    /// <summary>Threshold power, W.</summary>
    public double? ThresholdPowerW { get; init; }

    /// <summary>Threshold heart rate, bpm.</summary>
    public double? ThresholdHeartRateBpm { get; init; }

    /// <summary>The date the threshold is in force from.</summary>
    public LocalDate? ThresholdFrom { get; init; }

    /// <summary>Planned hours a week, h.</summary>
    public double? WeeklyHours { get; init; }

    /// <summary>Experience.</summary>
    public Experience? Experience { get; init; }

    /// <summary>Days that can be ridden on; empty: not said.</summary>
    public ImmutableArray<IsoDayOfWeek> Days { get; init; } = [];
}
