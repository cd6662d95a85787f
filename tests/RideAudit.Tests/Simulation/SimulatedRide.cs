using NodaTime;
using RideAudit.Rides;

namespace RideAudit.Tests.Simulation;

/// <summary>A session as it was ridden, one value a second.</summary>
/// <param name="Session">What was meant.</param>
/// <param name="PowerW">Power, W, whole.</param>
/// <param name="HeartRateBpm">Heart rate, bpm, whole.</param>
/// <param name="CadenceRpm">Cadence, rpm, whole; 0 while coasting.</param>
internal sealed record SimulatedRide(Session Session, float[] PowerW, float[] HeartRateBpm, float[] CadenceRpm)
{
    public SampleGrid Grid => new()
    {
        Length = PowerW.Length,
        Segments = [new GridSegment(0, PowerW.Length, 0)],
        PowerW = PowerW,
        HeartRateBpm = HeartRateBpm,
        CadenceRpm = CadenceRpm,
    };

    /// <summary>The ride as the readers would have read it.</summary>
    /// <param name="start">Local start.</param>
    public Ride RideAt(OffsetDateTime start)
    {
        var name = SimulatedFiles.NameAt(start) + ".fit";
        return new Ride
        {
            File = name,
            Parts = [name],
            StartsAt = start,
            Sport = RideSport.Cycling,
            Grid = Grid,
            TimerSeconds = PowerW.Length,
            ElapsedSeconds = PowerW.Length,
        };
    }

    /// <summary>The same ride with every second's power scaled.</summary>
    public SimulatedRide Times(double factor) => this with { PowerW = [.. PowerW.Select(p => (float)Math.Round(p * factor))] };
}
