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
        var zero = recording.Start.ToUnixTimeSeconds();
        foreach (var stretch in stretches)
        {
            var segment = recording.Grid.Segments.First(s => zero + s.ClockSecond <= stretch.Start && stretch.End <= zero + s.ClockSecond + s.Length);
            yield return new GridJoiner.Piece(recording.Grid, segment.Start + (int)(stretch.Start - zero - segment.ClockSecond), (int)stretch.Length, stretch.Start - zero);
        }
    }

    private static SampleGrid Cut(SampleGrid grid, long clockStart, IReadOnlyList<GridJoiner.Piece> pieces)
    {
        float[]? Channel(float[]? values) => values is null ? null : [.. pieces.SelectMany(p => values.AsSpan(p.Start, p.Length).ToArray())];
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
            PowerW = Channel(grid.PowerW),
            HeartRateBpm = Channel(grid.HeartRateBpm),
            CadenceRpm = Channel(grid.CadenceRpm),
            SpeedMps = Channel(grid.SpeedMps),
            DistanceM = FromItsStart(Channel(grid.DistanceM)),
        };
    }

    private static float[]? FromItsStart(float[]? metres)
    {
        var first = SampleGrid.FirstValue(metres);
        return metres is null ? null : Array.ConvertAll(metres, m => m - first);
    }
}
