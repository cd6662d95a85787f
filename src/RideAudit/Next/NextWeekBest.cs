using System.Collections.Immutable;

namespace RideAudit.Next;

/// <summary>The best layout seen so far.</summary>
internal sealed class NextWeekBest
{
    private NextWeekScore _score;

    /// <summary>Its days; null before any was offered.</summary>
    public ImmutableArray<PlannedDay>? Days { get; private set; }

    /// <summary>Takes a layout that is better; the first of two alike stays.</summary>
    public void Offer(NextWeekScore score, ImmutableArray<PlannedDay> days)
    {
        if (Days is not null && score.CompareTo(_score) >= 0)
            return;
        (_score, Days) = (score, days);
    }
}
