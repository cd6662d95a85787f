using System.Collections.Immutable;
using NodaTime;

namespace RideAudit.Plan;

/// <summary>What is to change in a rider file. What is not given stays as it is written.</summary>
public sealed record RiderFileEdit
{
    /// <summary>An answer to one question: not given, a value, or nothing, which takes the key out.</summary>
    /// <param name="Given">False: the file is left as it is.</param>
    /// <param name="Value">The value; null takes the key out.</param>
    public readonly record struct Answer<T>(bool Given, T? Value)
    {
        /// <summary>Takes the key out.</summary>
        public static Answer<T> Nothing => new(true, default);

        /// <summary>A value as an answer.</summary>
        public static implicit operator Answer<T>(T value) => new(true, value);
    }

    /// <summary>Printed on the review.</summary>
    public Answer<string> Label { get; init; }

    /// <summary>IANA time zone.</summary>
    public Answer<string> TimeZone { get; init; }

    /// <summary>Only used for heart-rate load.</summary>
    public Answer<Sex?> Sex { get; init; }

    /// <summary>Body mass, kg.</summary>
    public Answer<double?> MassKg { get; init; }

    /// <summary>Riding experience.</summary>
    public Answer<Experience?> Experience { get; init; }

    /// <summary>
    /// The date the thresholds below are in force from: the entry of that date is changed, or one is added and the older ones stay. Null: the
    /// latest entry is changed; where there is none, one is added from the first ride's date on.
    /// </summary>
    public LocalDate? ThresholdFrom { get; init; }

    /// <summary>Threshold power (FTP), W.</summary>
    public Answer<double?> ThresholdPowerW { get; init; }

    /// <summary>Threshold heart rate, bpm.</summary>
    public Answer<double?> ThresholdHeartRateBpm { get; init; }

    /// <summary>Resting heart rate, bpm.</summary>
    public Answer<double?> RestHeartRateBpm { get; init; }

    /// <summary>Highest heart rate, bpm.</summary>
    public Answer<double?> MaxHeartRateBpm { get; init; }

    /// <summary>The week's first day.</summary>
    public Answer<IsoDayOfWeek?> WeekStartsOn { get; init; }

    /// <summary>Planned hours a week, h.</summary>
    public Answer<double?> WeeklyHours { get; init; }

    /// <summary>Days that can be ridden on; an empty list takes the key out: any day.</summary>
    public ImmutableArray<IsoDayOfWeek>? Days { get; init; }

    /// <summary>Headers of CSV columns by channel, among <see cref="RiderFileReader.CsvChannels"/>; a channel that is not named stays as it is.</summary>
    public ImmutableSortedDictionary<string, Answer<string>> CsvColumns { get; init; } = ImmutableSortedDictionary<string, Answer<string>>.Empty;

    /// <summary>All excepted days as they are to be; null: as they are. Those that are written already keep their lines.</summary>
    public ImmutableArray<PlanException>? Exceptions { get; init; }
}
