using System.Collections.Immutable;

namespace RideAudit.Weeks;

/// <summary>What came before a week.</summary>
/// <param name="Weeks">Every week from the first ride's to the one before, oldest first, none left out.</param>
public sealed record Past(ImmutableArray<WeekFacts> Weeks)
{
    /// <summary>No history.</summary>
    public static Past None { get; } = new(ImmutableArray<WeekFacts>.Empty);

    /// <summary>The week before; null without history.</summary>
    public WeekFacts? LastWeek => Weeks.IsEmpty ? null : Weeks[^1];
}
