using System.Collections.Immutable;

namespace RideAudit.Rides;

/// <summary>Lays the grids of a ride's recordings on one grid.</summary>
internal static class GridJoiner
{
    /// <summary>Joins grids. Of seconds that two recordings cover the earlier one's count: nobody rides twice at once.</summary>
    /// <param name="parts">Each grid with the clock second, from the ride's start, at which its recording begins.</param>
    /// <returns>The grid, and how many seconds were left out because another recording covers them.</returns>
    public static (SampleGrid Grid, int LeftOut) Join(IReadOnlyList<(SampleGrid Grid, long ClockSecond)> parts)
    {
        if (parts.Count == 1)
            return (Sensed(parts[0].Grid), 0);
        var pieces = Pieces(parts);
        var length = pieces.Sum(p => p.Length);
        var leftOut = parts.Sum(p => p.Grid.Length) - length;
        if (length == 0)
            return (SampleGrid.Empty, leftOut);
        var joined = new SampleGrid
        {
            Length = length,
            Segments = Segments(pieces),
            PowerW = Power(pieces, length),
            HeartRateBpm = Channel(pieces, length, g => g.HeartRateBpm),
            CadenceRpm = Channel(pieces, length, g => g.CadenceRpm),
            SpeedMps = Channel(pieces, length, g => g.SpeedMps),
            Distance = Distance(pieces),
        };
        return (joined, leftOut);
    }

    private static SampleGrid Sensed(SampleGrid grid) =>
        grid.PowerW is null || SampleGrid.Measures(grid.PowerW) ? grid : grid with { PowerW = null };

    private static List<Piece> Pieces(IReadOnlyList<(SampleGrid Grid, long ClockSecond)> parts)
    {
        var pieces = new List<Piece>();
        var covered = long.MinValue;
        foreach (var piece in parts
            .SelectMany(p => p.Grid.Segments.Select(s => new Piece(p.Grid, s.Start, s.Length, p.ClockSecond + s.ClockSecond)))
            .OrderBy(p => p.ClockSecond))
        {
            var kept = covered > piece.ClockSecond ? piece.From(covered) : piece;
            if (kept.Length == 0)
                continue;
            pieces.Add(kept);
            covered = kept.ClockEnd;
        }
        return pieces;
    }

    private static ImmutableArray<GridSegment> Segments(List<Piece> pieces)
    {
        var segments = new List<GridSegment>();
        var start = 0;
        foreach (var piece in pieces)
        {
            var segment = new GridSegment(start, piece.Length, piece.ClockSecond);
            start += piece.Length;
            // A recording cut in two files goes on in the very next second: that is no pause.
            if (segments.Count > 0 && segments[^1] is var last && last.ClockSecond + last.Length == segment.ClockSecond)
                segments[^1] = last with { Length = last.Length + segment.Length };
            else
                segments.Add(segment);
        }
        return [.. segments];
    }

    /// <summary>Power, without recordings that are 0 throughout: their sensor was not there, unless they go straight on from one that measures.</summary>
    private static PackedSamples? Power(List<Piece> pieces, int length)
    {
        var measuring = pieces.Select(p => p.Grid).Where(g => SampleGrid.Measures(g.PowerW)).ToHashSet(ReferenceEqualityComparer.Instance);
        var grown = true;
        while (grown)
        {
            grown = false;
            for (var i = 1; i < pieces.Count; i++)
                if (pieces[i - 1].ClockEnd == pieces[i].ClockSecond
                    && (measuring.Contains(pieces[i - 1].Grid) || measuring.Contains(pieces[i].Grid)))
                    grown |= measuring.Add(pieces[i - 1].Grid) | measuring.Add(pieces[i].Grid);
        }
        return Channel(pieces, length, g => measuring.Contains(g) ? g.PowerW : null);
    }

    private static PackedSamples? Channel(List<Piece> pieces, int length, Func<SampleGrid, PackedSamples?> channel)
    {
        if (pieces.TrueForAll(p => channel(p.Grid) is null))
            return null;
        using var joined = new Lent<float>(length);
        var at = 0;
        foreach (var piece in pieces)
        {
            var part = joined.Span.Slice(at, piece.Length);
            if (channel(piece.Grid) is { } values)
                values.CopyTo(piece.Start, part);
            else
                part.Fill(float.NaN);
            at += piece.Length;
        }
        return PackedSamples.Of(joined.Span);
    }

    private static ImmutableArray<DistanceStretch> Distance(List<Piece> pieces)
    {
        var joined = ImmutableArray.CreateBuilder<DistanceStretch>();
        float last = 0, offset = 0;
        var at = 0;
        for (var i = 0; i < pieces.Count; i++)
        {
            DistanceStretch[] part = [.. DistanceStretch.Within(pieces[i].Grid.Distance, pieces[i].Start, pieces[i].Start + pieces[i].Length)];
            // Every recording counts its distance from its own start.
            if (i > 0 && !ReferenceEquals(pieces[i].Grid, pieces[i - 1].Grid))
                offset = last - (pieces[i].Start == 0 || part.Length == 0 ? 0 : part[0].FromM);
            foreach (var stretch in part)
            {
                joined.Add(stretch.Moved(at - pieces[i].Start, offset));
                last = joined[^1].ToM;
            }
            at += pieces[i].Length;
        }
        return joined.ToImmutable();
    }

    /// <summary>A stretch of one recording's grid, placed on the clock of the ride it belongs to.</summary>
    /// <param name="Grid">The recording's grid.</param>
    /// <param name="Start">Index of its first second on that grid.</param>
    /// <param name="Length">Its seconds.</param>
    /// <param name="ClockSecond">Seconds on the clock from the ride's start to its first second.</param>
    internal readonly record struct Piece(SampleGrid Grid, int Start, int Length, long ClockSecond)
    {
        /// <summary>The clock second after its last one.</summary>
        public long ClockEnd => ClockSecond + Length;

        /// <summary>What is left from a clock second on.</summary>
        public Piece From(long clockSecond)
        {
            var cut = (int)Math.Clamp(clockSecond - ClockSecond, 0, Length);
            return new Piece(Grid, Start + cut, Length - cut, ClockSecond + cut);
        }
    }
}
