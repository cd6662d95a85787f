using System.Collections.Immutable;
using NodaTime;

namespace RideAudit.Plan;

/// <summary>A rider file, read and checked.</summary>
public sealed record Rider
{
    /// <summary>Printed on the review; the only personal detail there is.</summary>
    public string Label { get; init; } = "Rider";

    /// <summary>IANA time zone; null: the machine's, with a notice.</summary>
    public DateTimeZone? TimeZone { get; init; }

    /// <summary>Only used for heart-rate load.</summary>
    public Sex Sex { get; init; }

    /// <summary>Body mass, kg; null when not given.</summary>
    public double? MassKg { get; init; }

    /// <summary>Riding experience.</summary>
    public Experience Experience { get; init; } = Experience.Regular;

    /// <summary>Dated thresholds, earliest first; may be empty.</summary>
    public ImmutableArray<ThresholdEntry> Thresholds { get; init; } = [];

    /// <summary>Resting heart rate, bpm; null when not given.</summary>
    public double? RestHeartRateBpm { get; init; }

    /// <summary>Highest heart rate, bpm; null when not given.</summary>
    public double? MaxHeartRateBpm { get; init; }

    /// <summary>The plan.</summary>
    public TrainingPlan Plan { get; init; } = new();

    /// <summary>Excepted days, earliest first.</summary>
    public ImmutableArray<PlanException> Exceptions { get; init; } = [];

    /// <summary>Planned hours by date, earliest first; before the first entry, <see cref="TrainingPlan.WeeklyHours"/>.</summary>
    public ImmutableArray<HoursEntry> Hours { get; init; } = [];

    /// <summary>Minutes free by weekday; null without a table of them, else a weekday that is not in it has none.</summary>
    public ImmutableSortedDictionary<IsoDayOfWeek, int>? MinutesFree { get; init; }

    /// <summary>Rides that stand every week, in the order of the file.</summary>
    public ImmutableArray<FixedRide> FixedRides { get; init; } = [];

    /// <summary>The coach’s own sessions, in the order of the file.</summary>
    public ImmutableArray<OwnSession> Sessions { get; init; } = [];

    /// <summary>Rules set aside for a while, in the order of the file.</summary>
    public ImmutableArray<SetAsideRule> SetAside { get; init; } = [];

    /// <summary>CSV columns by channel name, for files whose headers are not understood: channel → header.</summary>
    public ImmutableDictionary<string, string> CsvColumns { get; init; } = ImmutableDictionary<string, string>.Empty;
}
