using System.Collections.Immutable;

namespace RideAudit.Rides;

/// <summary>Puts the grids of consecutive recordings one after the other.</summary>
internal static class GridJoiner
{
    /// <summary>Joins grids.</summary>
    /// <param name="parts">Each grid with the clock second, from the first one's start, at which it begins.</param>
    public static SampleGrid Join(IReadOnlyList<(SampleGrid Grid, long ClockSecond)> parts)
    {
        if (parts.Count == 1)
            return parts[0].Grid;
        return new SampleGrid
        {
            Length = parts.Sum(p => p.Grid.Length),
            Segments = Segments(parts),
            PowerW = Channel(parts, g => g.PowerW),
            HeartRateBpm = Channel(parts, g => g.HeartRateBpm),
            CadenceRpm = Channel(parts, g => g.CadenceRpm),
            SpeedMps = Channel(parts, g => g.SpeedMps),
            AltitudeM = Channel(parts, g => g.AltitudeM),
            DistanceM = Distance(parts),
        };
    }

    private static ImmutableArray<GridSegment> Segments(IReadOnlyList<(SampleGrid Grid, long ClockSecond)> parts)
    {
        var segments = new List<GridSegment>();
        var start = 0;
        foreach (var (grid, clock) in parts)
            foreach (var segment in grid.Segments)
            {
                var moved = new GridSegment(start, segment.Length, clock + segment.ClockSecond);
                start += segment.Length;
                // A recording cut in two files goes on in the very next second: that is no pause.
                if (segments.Count > 0 && segments[^1] is var last && last.ClockSecond + last.Length == moved.ClockSecond)
                    segments[^1] = last with { Length = last.Length + moved.Length };
                else
                    segments.Add(moved);
            }
        return [.. segments];
    }

    private static float[]? Channel(IReadOnlyList<(SampleGrid Grid, long ClockSecond)> parts, Func<SampleGrid, float[]?> channel)
    {
        if (parts.All(p => channel(p.Grid) is null))
            return null;
        var joined = new float[parts.Sum(p => p.Grid.Length)];
        var at = 0;
        foreach (var (grid, _) in parts)
        {
            if (channel(grid) is { } values)
                values.CopyTo(joined, at);
            else
                joined.AsSpan(at, grid.Length).Fill(float.NaN);
            at += grid.Length;
        }
        return joined;
    }

    private static float[]? Distance(IReadOnlyList<(SampleGrid Grid, long ClockSecond)> parts)
    {
        var joined = Channel(parts, g => g.DistanceM);
        if (joined is null)
            return null;
        var before = 0f;
        var at = 0;
        foreach (var (grid, _) in parts)
        {
            var last = before;
            for (var i = at; i < at + grid.Length; i++)
            {
                joined[i] += before;
                last = float.IsNaN(joined[i]) ? last : joined[i];
            }
            before = last;
            at += grid.Length;
        }
        return joined;
    }
}
