using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Sessions;

/// <summary>A planned session as if it had been ridden exactly as it is written, so that the code that reads rides says what it is.</summary>
internal static class PlannedTrace
{
    // Kinds, bands and stress rest on shares alone: where no threshold is known, any will do.
    private static readonly Watts AnyPower = new(200);
    private const double AnyHeartRateBpm = 165;

    /// <summary>Shares of threshold power, or of threshold heart rate for a session told in it, %, second by second.</summary>
    public static float[] Percents(FittedSession session)
    {
        var percents = new float[session.Seconds];
        var at = 0;
        foreach (var step in session.Steps)
        {
            var even = step.Effort.Ramps ? 0 : EffortShares.At(step.Effort, 0, step.Seconds);
            for (var second = 0; second < step.Seconds; second++)
                percents[at++] = (float)(step.Effort.Ramps ? EffortShares.At(step.Effort, second, step.Seconds) : even);
        }
        return percents;
    }

    /// <summary>The session as a ride of that day.</summary>
    /// <param name="date">Its day.</param>
    /// <param name="measures">The rider's thresholds.</param>
    public static Ride RideOf(FittedSession session, LocalDate date, SessionMeasures measures)
    {
        var unit = (session.InHeartRate ? measures.HeartRateBpm ?? AnyHeartRateBpm : (measures.Power ?? AnyPower).Value) / 100;
        var values = Array.ConvertAll(Percents(session), p => (float)(p * unit));
        return new Ride
        {
            File = "planned",
            Parts = ["planned"],
            StartsAt = (date + LocalTime.Noon).WithOffset(Offset.Zero),
            Sport = RideSport.Cycling,
            Grid = new SampleGrid
            {
                Length = values.Length,
                Segments = [new GridSegment(0, values.Length, 0)],
                PowerW = session.InHeartRate ? null : values,
                HeartRateBpm = session.InHeartRate ? values : null,
            },
            TimerSeconds = values.Length,
            ElapsedSeconds = values.Length,
        };
    }

    /// <summary>Kind, stress, bands and all other figures of the session, by the same code as those of ridden rides.</summary>
    /// <param name="date">Its day.</param>
    /// <param name="rider">The rider: thresholds, heart rates, band cuts.</param>
    /// <param name="limits">The limits that kinds are read by.</param>
    public static RideFigures FiguresOf(FittedSession session, LocalDate date, Rider rider, Limits limits)
    {
        var measures = SessionMeasures.Of(rider, date);
        var threshold = new ThresholdInForce(measures.Power ?? AnyPower, ThresholdSource.RiderFile);
        return FigureBuilder.Build(RideOf(session, date, measures), threshold, measures.HeartRateBpm ?? AnyHeartRateBpm, rider, limits);
    }
}
