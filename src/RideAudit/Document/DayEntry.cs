using System.Collections.Immutable;
using NodaTime;

namespace RideAudit.Document;

/// <summary>One day of the reviewed week.</summary>
public sealed record DayEntry
{
    /// <summary>Local date.</summary>
    public required LocalDate Date { get; init; }

    /// <summary><c>rest</c>, <c>recovery</c>, <c>endurance</c>, <c>unrated</c>, <c>long</c>, <c>threshold</c>, <c>high</c>; <c>to come</c> for a day of an unfinished week that is not over.</summary>
    public required string Kind { get; init; }

    /// <summary>Hours ridden, two decimals.</summary>
    public required double Hours { get; init; }

    /// <summary>Training stress, points, one decimal; null when none of the day's rides has one.</summary>
    public required double? Stress { get; init; }

    /// <summary>The rides, by file.</summary>
    public required ImmutableArray<string> Rides { get; init; }

    /// <summary>Hours of other activity, two decimals.</summary>
    public double OtherActivityHours { get; init; }
}
