using System.Collections.Immutable;
using NodaTime;

namespace RideAudit.Document;

/// <summary>The reviewed week's sums, or one row of <c>weeks</c>.</summary>
public sealed record WeekEntry
{
    /// <summary>First day.</summary>
    public required LocalDate StartsOn { get; init; }

    /// <summary>ISO 8601 week such as <c>2026-W19</c>; null for a week that does not start on Monday.</summary>
    public required string? IsoWeek { get; init; }

    /// <summary>False while the as-of date is inside the week.</summary>
    public required bool Finished { get; init; }

    /// <summary>Hours ridden, two decimals.</summary>
    public required double Hours { get; init; }

    /// <summary>Rides.</summary>
    public required int RideCount { get; init; }

    /// <summary>Training stress, points, one decimal.</summary>
    public required double Stress { get; init; }

    /// <summary>Hours that no stress covers, two decimals.</summary>
    public required double StressUnknownHours { get; init; }

    /// <summary>Work, kJ, whole; null when no ride has power.</summary>
    public required double? WorkKj { get; init; }

    /// <summary>Seconds in the bands.</summary>
    public required BandEntry BandSeconds { get; init; }

    /// <summary>Seconds in the seven power zones, zone 1 first.</summary>
    public required ImmutableArray<long> ZoneSeconds { get; init; }

    /// <summary>Split by time; null without banded time.</summary>
    public required SplitEntry? SplitByTime { get; init; }

    /// <summary>Split by session; null without a ride that has a kind.</summary>
    public required SessionSplitEntry? SplitBySession { get; init; }

    /// <summary>Polarization index, two decimals; null where the shares do not allow it.</summary>
    public required double? PolarizationIndex { get; init; }

    /// <summary>The structure in one word; null without banded time.</summary>
    public required string? Structure { get; init; }

    /// <summary>Intended low share, 0 to 1; null without a tier.</summary>
    public required double? IntendedLowShare { get; init; }

    /// <summary>Tolerance around it, 0 to 1; null without a tier.</summary>
    public double? SplitTolerance { get; init; }

    /// <summary>The longest ride, whole seconds.</summary>
    public required long LongestRideSeconds { get; init; }

    /// <summary>Length the plan asks of the long ride, s; null without a tier or where it is not asked.</summary>
    public long? LongRideAskedSeconds { get; init; }

    /// <summary>Hours of other activity, two decimals.</summary>
    public required double OtherActivityHours { get; init; }

    /// <summary><c>lighter</c>, <c>event</c>, <c>away</c>; null for an ordinary week.</summary>
    public required string? Exception { get; init; }

    /// <summary>Acute load at the week's end, one decimal.</summary>
    public required double AcuteLoad { get; init; }

    /// <summary>Chronic load at the week's end, one decimal.</summary>
    public required double ChronicLoad { get; init; }

    /// <summary>The week's change in chronic load, one decimal.</summary>
    public required double RampPerWeek { get; init; }

    /// <summary>Acute over chronic load, two decimals; never drives a verdict; null while chronic load is 0.</summary>
    public required double? AcuteChronicRatio { get; init; }

    /// <summary>Within the first 42 days of riding.</summary>
    public required bool SettlingIn { get; init; }

    /// <summary>Monotony, two decimals; null for seven equal days.</summary>
    public required double? Monotony { get; init; }

    /// <summary>Strain, points, one decimal; null where monotony is.</summary>
    public required double? Strain { get; init; }

    /// <summary>Mean weekly stress of up to four weeks before, one decimal; null without history.</summary>
    public double? StressMeanBefore { get; init; }

    /// <summary>Number of this week in the plan, 1 first; null without a dated plan or outside it.</summary>
    public int? PlanWeek { get; init; }

    /// <summary>The plan's length, weeks; null without one.</summary>
    public int? PlanWeeks { get; init; }

    /// <summary>The seven days.</summary>
    public required ImmutableArray<DayEntry> Days { get; init; }

    /// <summary>Spans between hard rides, in order.</summary>
    public ImmutableArray<SpanEntry> Spans { get; init; } = [];
}
