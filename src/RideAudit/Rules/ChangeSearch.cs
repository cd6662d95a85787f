using System.Collections.Immutable;

namespace RideAudit.Rules;

/// <summary>Finds the smallest change of a week that would have kept a broken rule.</summary>
public static class ChangeSearch
{
    /// <summary>Searches the classes in order; every candidate is judged by the same rules.</summary>
    /// <param name="week">The week as ridden.</param>
    /// <param name="findings">Its findings.</param>
    /// <returns>Null when no rule it looks at is broken; no changes and a sentence when nothing helps.</returns>
    public static SmallestChange? Find(WeekUnderReview week, ImmutableArray<Finding> findings) => throw new NotImplementedException();
}
