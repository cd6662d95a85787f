using System.Collections.Immutable;

namespace RideAudit.Rides;

/// <summary>The seconds of a recording on which the bicycle stood by its own speed.</summary>
internal static class StandingTime
{
    /// <summary>Up to this speed a bicycle stands, m/s: what a satellite receiver writes for one that does.</summary>
    private const float StandingMps = 0.5f;

    /// <summary>Its stretches as half-open ranges of grid seconds; null where speed is 0 throughout, as indoors: it then says nothing.</summary>
    /// <param name="speedMps">Speed on the grid, m/s, NaN where missing.</param>
    public static ImmutableArray<(int Start, int End)>? Of(ReadOnlySpan<float> speedMps)
    {
        var stretches = ImmutableArray.CreateBuilder<(int Start, int End)>();
        var moves = false;
        for (int start = 0, end; start < speedMps.Length; start = end + 1)
        {
            for (end = start; end < speedMps.Length && speedMps[end] <= StandingMps;)
                moves |= speedMps[end++] > 0;
            moves |= end < speedMps.Length && speedMps[end] > 0;
            if (end > start)
                stretches.Add((start, end));
        }
        return moves ? stretches.ToImmutable() : null;
    }

    /// <summary>Seconds of a range that lie in such stretches.</summary>
    public static int Within(ImmutableArray<(int Start, int End)> stretches, int start, int end) =>
        stretches.Sum(s => Math.Max(0, Math.Min(s.End, end) - Math.Max(s.Start, start)));
}
