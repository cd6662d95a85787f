using System.Collections.Immutable;
using NodaTime;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>What is known of a day before a week is laid out.</summary>
internal sealed record DayFrame
{
    public required LocalDate Date { get; init; }

    /// <summary>The day as ridden; null for a day to come.</summary>
    public DayFacts? Ridden { get; init; }

    /// <summary>What it is excepted for.</summary>
    public ExceptionKind? Exception { get; init; }

    /// <summary>Rides that stand on it, and are all of it.</summary>
    public ImmutableArray<StockRide> Standing { get; init; } = [];

    /// <summary>Minutes free, 0 or more.</summary>
    public int Free { get; init; }

    /// <summary>A hard ride may be laid out on it, as far as illness, events and absences go.</summary>
    public bool MayBeHard { get; init; } = true;

    /// <summary>A high ride may be.</summary>
    public bool MayBeHigh { get; init; } = true;

    /// <summary>More than a short easy ride may be.</summary>
    public bool MayBeLoaded { get; init; } = true;

    /// <summary>The longest ride it may hold where something lies behind it or before it, min.</summary>
    public int MostMinutes => MayBeLoaded ? Free : Math.Min(Free, ShortRide);

    /// <summary>Nothing is to be chosen on it.</summary>
    public bool IsSettled => Ridden is not null || !Standing.IsEmpty || Free < LeastRide;

    /// <summary>Shorter than this is no ride to plan, min.</summary>
    public const int LeastRide = 20;

    private const int ShortRide = 45;
}
