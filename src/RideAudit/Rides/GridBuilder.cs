using RideAudit.Units;

namespace RideAudit.Rides;

/// <summary>Lays a track on a 1 s grid of timer time.</summary>
/// <remarks>
/// No record for up to 10 s holds the last values; a longer silence is missing data while the timer ran, a pause where no timer events are known.
/// A record without power is 0 W where it says cadence 0, else it holds the last for up to 3 s, other channels for up to 10 s.
/// Power or heart rate that stands still for minutes while the ride goes on is missing.
/// </remarks>
internal static class GridBuilder
{
    /// <summary>Longest silence between records that holds the last values, s.</summary>
    public const int LongestHeldGapSeconds = 10;

    /// <summary>Longest run of records without power that holds the last power, s.</summary>
    public const int LongestHeldPowerSeconds = 3;

    private const float LowestHeartRateBpm = 30;
    private const float HighestHeartRateBpm = 230;

    /// <summary>Builds the grid.</summary>
    /// <param name="track">In any order; it is not changed.</param>
    /// <param name="keepsAll">True to keep cadence and speed, which no figure is computed from, as well.</param>
    /// <returns>The grid; empty when the timer never ran over a record.</returns>
    public static GriddedTrack Build(in Track track, bool keepsAll = true)
    {
        using var phase = Phase.Begin("grid");
        var samples = SecondSamples.From(track);
        if (samples.Count == 0)
            return GriddedTrack.Empty;
        var intervals = TimerIntervals.Of(track, samples);
        using var layout = new GridLayout(samples, intervals);
        using var power = new Lent<float>(layout.Length);
        using var heart = new Lent<float>(layout.Length);
        using var cadence = new Lent<float>(layout.Length);
        using var speed = new Lent<float>(layout.Length);

        // Endless power stays: it is counted and said when spikes are taken out. Nothing else would be.
        LayPower(layout, track, power.Span);
        layout.Lay(track.HeartRateBpm, LowestHeartRateBpm, HighestHeartRateBpm, LongestHeldGapSeconds, heart.Span, out var refusedHeart);
        layout.Lay(track.SpeedMps, 0, float.MaxValue, LongestHeldGapSeconds, speed.Span, out _);
        var stands = StuckSensors.AnyStandsStill(power.Span) || StuckSensors.AnyStandsStill(heart.Span);
        if (stands || keepsAll)
            layout.Lay(track.CadenceRpm, 0, float.MaxValue, LongestHeldGapSeconds, cadence.Span, out _);
        var (stuckPower, stuckHeart) = !stands ? (0, 0)
            : (StuckSensors.Remove(power.Span, cadence.Span, speed.Span, mayBeTargets: true), StuckSensors.Remove(heart.Span, cadence.Span, speed.Span, mayBeTargets: false));
        var grid = new SampleGrid
        {
            Length = layout.Length,
            Segments = layout.Segments,
            PowerW = Packed(power.Span),
            HeartRateBpm = Packed(heart.Span),
            CadenceRpm = keepsAll ? Packed(cadence.Span) : null,
            SpeedMps = keepsAll ? Packed(speed.Span) : null,
            Distance = layout.Distances(track.DistanceM),
            Standing = track.SpeedMps.IsEmpty ? null : StandingTime.Of(speed.Span),
        };
        return Time(track, samples, intervals, grid, layout.RecordedSeconds) with
        {
            ImplausibleHeartRates = refusedHeart,
            StuckPowerSeconds = stuckPower,
            StuckHeartRateSeconds = stuckHeart,
        };
    }

    /// <summary>In a ride with power a record without it that says cadence 0 is coasting: some devices leave 0 W out.</summary>
    private static void LayPower(in GridLayout layout, in Track track, Span<float> laid)
    {
        if (track.CadenceRpm.IsEmpty || !layout.HasGaps(track.PowerW))
        {
            layout.Lay(track.PowerW, 0, float.PositiveInfinity, LongestHeldPowerSeconds, laid, out _);
            return;
        }
        using var power = new Lent<float>(layout.Records);
        using var cadence = new Lent<float>(layout.Records);
        layout.Merge(track.PowerW, 0, float.PositiveInfinity, power.Span, out _);
        layout.Merge(track.CadenceRpm, 0, float.PositiveInfinity, cadence.Span, out _);
        if (power.Span.ContainsAnyInRange(float.Epsilon, float.PositiveInfinity))
            for (var i = 0; i < power.Span.Length; i++)
                if (float.IsNaN(power.Span[i]) && cadence.Span[i] == 0)
                    power.Span[i] = 0;
        layout.LayMerged(power.Span, LongestHeldPowerSeconds, laid);
    }

    private static PackedSamples? Packed(ReadOnlySpan<float> laid) => PackedSamples.Of(laid) is { Values: > 0 } packed ? packed : null;

    private static GriddedTrack Time(
        in Track track, in SecondSamples samples, IReadOnlyList<TimerInterval> intervals, SampleGrid grid, int recorded)
    {
        var start = intervals.Count > 0 ? intervals[0].Start : samples.Seconds[0];
        var clock = intervals.Count > 0 ? intervals[^1].End - start : 0;
        // With timer events a stop may have been lost, without them a silence may have been a lost sensor: the stored total then lies between.
        var timerFits = track.StoredTimerSeconds is { } stored && (track.TimerEvents.Count > 0
            ? LiesBetween(stored, recorded, grid.Length)
            : LiesBetween(stored, grid.Length, clock));
        var timer = timerFits ? track.StoredTimerSeconds!.Value : grid.Length;
        var elapsedFits = track.StoredElapsedSeconds is { } elapsed && LiesBetween(elapsed, clock, clock) && elapsed >= timer;
        return new GriddedTrack(
            grid, start, timer, elapsedFits ? track.StoredElapsedSeconds!.Value : Math.Max(clock, timer),
            track.StoredTimerSeconds is not null && !timerFits);
    }

    private static bool LiesBetween(double storedSeconds, long least, long most) =>
        double.IsFinite(storedSeconds)
        && storedSeconds > 0
        && storedSeconds >= least - Math.Max(5, 0.02 * least)
        && storedSeconds <= most + Math.Max(5, 0.02 * most);
}
