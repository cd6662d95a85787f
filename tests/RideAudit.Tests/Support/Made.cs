using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Tests.Support;

/// <summary>Makes tracks, recordings, rides and riders out of a few numbers.</summary>
internal static class Made
{
    public const float None = float.NaN;

    public static readonly Instant Noon = Instant.FromUtc(2026, 5, 5, 12, 0);

    /// <summary>One value a second, block after block.</summary>
    public static float[] Blocks(params (int Seconds, double Value)[] blocks) =>
        [.. blocks.SelectMany(b => Enumerable.Repeat((float)b.Value, b.Seconds))];

    public static float[] Flat(int seconds, double value) => Blocks((seconds, value));

    public static SampleGrid Grid(float[]? power = null, float[]? heart = null, params int[] pausesBefore)
    {
        var length = power?.Length ?? heart!.Length;
        int[] starts = [0, .. pausesBefore];
        return new SampleGrid
        {
            Length = length,
            // Every pause is 100 s long on the clock.
            Segments = [.. starts.Select((s, i) => new GridSegment(s, (i + 1 < starts.Length ? starts[i + 1] : length) - s, s + 100 * i))],
            PowerW = power,
            HeartRateBpm = heart,
        };
    }

    public static Ride Ride(float[]? power = null, float[]? heart = null, Instant? start = null, string file = "ride.fit", params int[] pausesBefore)
    {
        var grid = Grid(power, heart, pausesBefore);
        return new Ride
        {
            File = file,
            Parts = [file],
            StartsAt = (start ?? Noon).WithOffset(Offset.Zero),
            Sport = RideSport.Cycling,
            Grid = grid,
            TimerSeconds = grid.Length,
            ElapsedSeconds = grid.Length + 100 * pausesBefore.Length,
        };
    }

    public static Recording Recording(
        string file, Instant start, float[]? power = null, float[]? heart = null, int? seconds = null, RideSport sport = RideSport.Cycling,
        Offset? offset = null)
    {
        var grid = power is null && heart is null
            ? new SampleGrid { Length = seconds!.Value, Segments = [new GridSegment(0, seconds.Value, 0)] }
            : Grid(power, heart);
        return new Recording
        {
            File = file,
            Sport = sport,
            Start = start,
            Offset = offset ?? Offset.Zero,
            Grid = sport == RideSport.Other ? SampleGrid.Empty : grid,
            TimerSeconds = grid.Length,
            ElapsedSeconds = grid.Length,
        };
    }

    public static Rider Rider(double? threshold = 250, double? heartRate = null, Sex sex = Sex.Unset, double? rest = 48, double? max = 188) => new()
    {
        Sex = sex,
        RestHeartRateBpm = rest,
        MaxHeartRateBpm = max,
        Thresholds = threshold is null && heartRate is null
            ? []
            : [new ThresholdEntry(new LocalDate(2026, 1, 1), threshold is { } watts ? new Watts(watts) : null, heartRate)],
    };

    public static RideFigures FiguresOf(Ride ride, Rider? rider = null, Limits? limits = null) =>
        FigureBuilder.Build([ride], rider ?? Rider(), limits ?? new Limits())[0];

    public static TrailingPower Trailing(float[] power, params int[] pausesBefore) =>
        TrailingPower.Of(power, Grid(power, null, pausesBefore).Segments);
}
