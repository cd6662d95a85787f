using System.Collections.Immutable;
using RideAudit.Weeks;

namespace RideAudit.Rules.Changes;

/// <summary>A week as it would have been.</summary>
/// <param name="Changes">What was done.</param>
/// <param name="Week">The week then.</param>
/// <param name="KeyTouched">Key sessions touched.</param>
/// <param name="MovedStress">Stress of the rides moved, or added or taken away, points.</param>
internal sealed record ChangeCandidate(ImmutableArray<RideChange> Changes, WeekFacts Week, int KeyTouched, double MovedStress)
{
    /// <summary>Its place among equals: fewer key sessions touched, then less moved stress, then the earlier date, then the ride's day and name.</summary>
    public static int Compare(ChangeCandidate a, ChangeCandidate b)
    {
        if (a.KeyTouched != b.KeyTouched)
            return a.KeyTouched.CompareTo(b.KeyTouched);
        var stress = Math.Round(a.MovedStress, 6).CompareTo(Math.Round(b.MovedStress, 6));
        if (stress != 0)
            return stress;
        for (var i = 0; i < Math.Min(a.Changes.Length, b.Changes.Length); i++)
        {
            var order = Compare(a.Changes[i], b.Changes[i]);
            if (order != 0)
                return order;
        }
        return a.Changes.Length.CompareTo(b.Changes.Length);
    }

    private static int Compare(RideChange a, RideChange b)
    {
        var date = a.To.CompareTo(b.To);
        if (date != 0)
            return date;
        var from = a.From.CompareTo(b.From);
        if (from != 0)
            return from;
        var ride = string.CompareOrdinal(a.Ride, b.Ride);
        return ride != 0 ? ride : a.Kind.CompareTo(b.Kind);
    }
}
