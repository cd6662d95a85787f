using System.Collections.Immutable;
using NodaTime;

namespace RideAudit.Rides;

/// <summary>Cuts stretches out of a recording.</summary>
internal static class RecordingCut
{
    /// <summary>What a recording holds of some stretches; its totals shrink with it.</summary>
    /// <param name="recording">It is not changed; one of totals alone is cut by its span.</param>
    /// <param name="stretches">Stretches of its running time, s since the Unix epoch, in order; at least one.</param>
    public static Recording To(Recording recording, IReadOnlyList<TimerInterval> stretches)
    {
        var whole = RunningTime.Total(RunningTime.Of(recording));
        var start = stretches[0].Start;
        return recording with
        {
            Start = Instant.FromUnixTimeSeconds(start),
            Grid = recording.Grid.Length == 0 ? recording.Grid : Cut(recording.Grid, start - recording.Start.ToUnixTimeSeconds(), [.. Pieces(recording, stretches)]),
            TimerSeconds = Math.Min(recording.TimerSeconds, recording.TimerSeconds * RunningTime.Total(stretches) / whole),
            ElapsedSeconds = stretches[^1].End - start,
        };
    }

    private static IEnumerable<GridJoiner.Piece> Pieces(Recording recording, IReadOnlyList<TimerInterval> stretches)
    {
        foreach (var stretch in stretches)
        {
            var (start, end) = GridRange(recording, stretch);
            yield return new GridJoiner.Piece(recording.Grid, start, end - start, stretch.Start - recording.Start.ToUnixTimeSeconds());
        }
    }

    /// <summary>Where a stretch of a recording's running time lies on its grid, half-open.</summary>
    public static (int Start, int End) GridRange(Recording recording, TimerInterval stretch)
    {
        var zero = recording.Start.ToUnixTimeSeconds();
        var segment = recording.Grid.Segments.First(s => zero + s.ClockSecond <= stretch.Start && stretch.End <= zero + s.ClockSecond + s.Length);
        var start = segment.Start + (int)(stretch.Start - zero - segment.ClockSecond);
        return (start, start + (int)stretch.Length);
    }

    private static SampleGrid Cut(SampleGrid grid, long clockStart, IReadOnlyList<GridJoiner.Piece> pieces)
    {
        var segments = ImmutableArray.CreateBuilder<GridSegment>(pieces.Count);
        var length = 0;
        foreach (var piece in pieces)
        {
            segments.Add(new GridSegment(length, piece.Length, piece.ClockSecond - clockStart));
            length += piece.Length;
        }
        return new SampleGrid
        {
            Length = length,
            Segments = segments.MoveToImmutable(),
            PowerW = Channel(grid.PowerW, pieces, length),
            HeartRateBpm = Channel(grid.HeartRateBpm, pieces, length),
            CadenceRpm = Channel(grid.CadenceRpm, pieces, length),
            SpeedMps = Channel(grid.SpeedMps, pieces, length),
            Distance = FromItsStart(grid.Distance, pieces),
        };
    }

    private static PackedSamples? Channel(PackedSamples? values, IReadOnlyList<GridJoiner.Piece> pieces, int length)
    {
        if (values is null)
            return null;
        using var cut = new Lent<float>(length);
        var at = 0;
        foreach (var piece in pieces)
        {
            values.CopyTo(piece.Start, cut.Span.Slice(at, piece.Length));
            at += piece.Length;
        }
        return PackedSamples.Of(cut.Span);
    }

    private static ImmutableArray<DistanceStretch> FromItsStart(ImmutableArray<DistanceStretch> distance, IReadOnlyList<GridJoiner.Piece> pieces)
    {
        var cut = ImmutableArray.CreateBuilder<DistanceStretch>();
        float? first = null;
        var at = 0;
        foreach (var piece in pieces)
        {
            foreach (var stretch in DistanceStretch.Within(distance, piece.Start, piece.Start + piece.Length))
            {
                first ??= stretch.FromM;
                cut.Add(stretch.Moved(at - piece.Start, -first.Value));
            }
            at += piece.Length;
        }
        return cut.ToImmutable();
    }
}
