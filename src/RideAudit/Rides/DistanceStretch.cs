using System.Collections.Immutable;

namespace RideAudit.Rides;

/// <summary>Distance over one stretch of the grid without a pause: what it was at the first and at the last second that has one. Seconds between them are not kept.</summary>
/// <param name="From">Grid second of the first value.</param>
/// <param name="FromM">The first value, m from the start.</param>
/// <param name="To">Grid second of the last value, not before <paramref name="From"/>.</param>
/// <param name="ToM">The last value, m.</param>
public readonly record struct DistanceStretch(int From, float FromM, int To, float ToM)
{
    /// <summary>What lies inside a range of grid seconds; cut in the middle, even going is taken.</summary>
    /// <param name="stretches">In order.</param>
    /// <param name="start">First second of the range.</param>
    /// <param name="end">Second after its last.</param>
    internal static IEnumerable<DistanceStretch> Within(ImmutableArray<DistanceStretch> stretches, int start, int end) => stretches
        .Where(s => s.To >= start && s.From < end)
        .Select(s => s.Cut(Math.Max(s.From, start), Math.Min(s.To, end - 1)));

    /// <summary>The same on another grid, its distance counted from elsewhere.</summary>
    internal DistanceStretch Moved(int seconds, float metres) => new(From + seconds, FromM + metres, To + seconds, ToM + metres);

    private DistanceStretch Cut(int from, int to) => new(from, At(from), to, At(to));

    private float At(int second) => second == From ? FromM : second == To ? ToM : FromM + (ToM - FromM) * (second - From) / (To - From);
}
