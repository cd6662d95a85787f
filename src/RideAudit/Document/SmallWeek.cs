using System.Collections.Immutable;
using System.Text.Json.Serialization;
using NodaTime;
using RideAudit.Document.Converters;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Document;

/// <summary>A week as a small spacing line draws it.</summary>
/// <param name="StartsOn">First day.</param>
/// <param name="Days">Its seven days.</param>
public sealed record SmallWeek(LocalDate StartsOn, ImmutableArray<SmallWeek.Day> Days)
{
    /// <summary>One day.</summary>
    public sealed record Day
    {
        /// <summary>Local date.</summary>
        public required LocalDate Date { get; init; }

        /// <summary>What the day was; null for a day of an unfinished week that is not over.</summary>
        [JsonConverter(typeof(DayKindJson))]
        public required DayKind? Kind { get; init; }

        /// <summary>Hours ridden.</summary>
        [JsonConverter(typeof(Rounded.To2))]
        public required double Hours { get; init; }

        /// <summary>Training stress, points; null when none of the day's rides has one.</summary>
        [JsonConverter(typeof(Rounded.To1))]
        public required double? Stress { get; init; }

        /// <summary>What the day is excepted for; null for an ordinary day.</summary>
        public ExceptionKind? Exception { get; init; }
    }
}
