using System.Collections.Immutable;
using System.Text.Json.Serialization;
using RideAudit.Document.Converters;
using RideAudit.Figures;

namespace RideAudit.Document;

/// <summary>Threshold power (FTP) as the review sees it: the value in force, where it came from, and what recent rides say beside it.</summary>
public sealed record ThresholdsEntry
{
    /// <summary>Threshold power in force at the last powered ride up to the week's end, W; null when none is known.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double? ThresholdPowerW { get; init; }

    /// <summary>Where it came from; null without one.</summary>
    public required ThresholdSource? ThresholdFrom { get; init; }

    /// <summary>95 % of the best 20 minutes of the last 90 days, W; null when no ride holds 20 minutes with power.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double? ThresholdEstimateW { get; init; }

    /// <summary>The best 20 minutes behind it.</summary>
    public required EffortEntry? BestTwentyMinutes { get; init; }

    /// <summary>Critical power of the last 90 days, W; null without three separate efforts between 2 and 20 minutes that make sense together.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double? CriticalPowerW { get; init; }

    /// <summary>Work that can be done above critical power, kJ; null without it.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double? WorkAboveCriticalPowerKj { get; init; }

    /// <summary>The efforts behind critical power, shortest first.</summary>
    public required ImmutableArray<EffortEntry> CriticalPowerEfforts { get; init; }

    /// <summary>Threshold power in force by date, earliest first, as far as rides tell; changes under 1 W are not listed.</summary>
    public required ImmutableArray<ThresholdStepEntry> InForce { get; init; }

    /// <summary>The three values side by side in one or two sentences.</summary>
    public required string Sentence { get; init; }
}
