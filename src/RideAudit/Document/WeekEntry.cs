using System.Collections.Immutable;
using System.Text.Json.Serialization;
using NodaTime;
using RideAudit.Document.Converters;
using RideAudit.Formatting;
using RideAudit.Plan;

namespace RideAudit.Document;

/// <summary>The reviewed week's sums, or one row of <c>weeks</c>.</summary>
public sealed record WeekEntry
{
    /// <summary>First day.</summary>
    public required LocalDate StartsOn { get; init; }

    /// <summary>The week of ISO 8601; null for a week that does not start on Monday.</summary>
    public required IsoWeek? IsoWeek { get; init; }

    /// <summary>False while the as-of date is inside the week.</summary>
    public required bool Finished { get; init; }

    /// <summary>Hours ridden.</summary>
    [JsonConverter(typeof(Rounded.To2))]
    public required double Hours { get; init; }

    /// <summary>Rides.</summary>
    public required int RideCount { get; init; }

    /// <summary>Training stress, points.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double Stress { get; init; }

    /// <summary>Hours that no stress covers.</summary>
    [JsonConverter(typeof(Rounded.To2))]
    public required double StressUnknownHours { get; init; }

    /// <summary>Work, kJ; null when no ride has power.</summary>
    [JsonConverter(typeof(Rounded.To0))]
    public required double? WorkKj { get; init; }

    /// <summary>Seconds in the bands.</summary>
    public required BandEntry BandSeconds { get; init; }

    /// <summary>Seconds in the seven power zones, zone 1 first.</summary>
    [JsonConverter(typeof(Rounded.To0))]
    public required ImmutableArray<double> ZoneSeconds { get; init; }

    /// <summary>Split by time; null without banded time.</summary>
    public required SplitEntry? SplitByTime { get; init; }

    /// <summary>Split by session; null without a ride that has a kind.</summary>
    public required SessionSplitEntry? SplitBySession { get; init; }

    /// <summary>Polarization index; null where the shares do not allow it.</summary>
    [JsonConverter(typeof(Rounded.To2))]
    public required double? PolarizationIndex { get; init; }

    /// <summary>How the intensity was spread; null without banded time.</summary>
    public required WeekStructure? Structure { get; init; }

    /// <summary>Intended low share, 0 to 1; null without a tier.</summary>
    [JsonConverter(typeof(Rounded.To4))]
    public required double? IntendedLowShare { get; init; }

    /// <summary>Tolerance around it, 0 to 1; null without a tier.</summary>
    [JsonConverter(typeof(Rounded.To4))]
    public double? SplitTolerance { get; init; }

    /// <summary>The longest ride, s.</summary>
    [JsonConverter(typeof(Rounded.To0))]
    public required double LongestRideSeconds { get; init; }

    /// <summary>Length the plan asks of the long ride, s; null without a tier or where it is not asked.</summary>
    [JsonConverter(typeof(Rounded.To0))]
    public double? LongRideAskedSeconds { get; init; }

    /// <summary>Hours of other activity.</summary>
    [JsonConverter(typeof(Rounded.To2))]
    public required double OtherActivityHours { get; init; }

    /// <summary>What the rider file excepts the week for; null for an ordinary week.</summary>
    public required ExceptionKind? Exception { get; init; }

    /// <summary>Acute load at the week's end.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double AcuteLoad { get; init; }

    /// <summary>Chronic load at the week's end.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double ChronicLoad { get; init; }

    /// <summary>The week's change in chronic load.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double RampPerWeek { get; init; }

    /// <summary>Acute over chronic load; never drives a verdict; null while chronic load is 0.</summary>
    [JsonConverter(typeof(Rounded.To2))]
    public required double? AcuteChronicRatio { get; init; }

    /// <summary>Within the first 42 days of riding.</summary>
    public required bool SettlingIn { get; init; }

    /// <summary>Monotony; null for seven equal days.</summary>
    [JsonConverter(typeof(Rounded.To2))]
    public required double? Monotony { get; init; }

    /// <summary>Strain, points; null where monotony is.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double? Strain { get; init; }

    /// <summary>Mean weekly stress of up to four weeks before; null without history.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public double? StressMeanBefore { get; init; }

    /// <summary>Number of this week in the plan, 1 first; null without a dated plan or outside it.</summary>
    public int? PlanWeek { get; init; }

    /// <summary>The plan's length, weeks; null without one.</summary>
    public int? PlanWeeks { get; init; }

    /// <summary>What the plan tables lay out for the week; null without a row in one.</summary>
    public PlannedWeekEntry? Planned { get; init; }

    /// <summary>One line a planned session and one a ride that nobody planned, by date; sessions still to come have none. Empty without a plan table.</summary>
    public ImmutableArray<HeldEntry> PlannedAndRidden { get; init; } = [];

    /// <summary>The seven days.</summary>
    public required ImmutableArray<DayEntry> Days { get; init; }

    /// <summary>Spans between hard rides, in order.</summary>
    public ImmutableArray<SpanEntry> Spans { get; init; } = [];
}
