namespace RideAudit.Tests.Worked;

/// <summary>A rider who does not exist, with weeks of rides up to Sunday 10 May 2026.</summary>
/// <param name="Name">The folder under testdata/worked.</param>
/// <param name="RiderFile">The text of rider.toml.</param>
/// <param name="Rides">Every recording.</param>
/// <param name="RideLog">The text of ride-log.csv; null without one.</param>
internal sealed record WorkedRider(string Name, string RiderFile, IReadOnlyList<WorkedRide> Rides, string? RideLog = null)
{
    public IEnumerable<(string File, string Text)> Files()
    {
        yield return ("rider.toml", RiderFile);
        if (RideLog is not null)
            yield return ("ride-log.csv", RideLog);
        foreach (var ride in Rides)
            yield return (ride.File, ride.Csv());
    }
}
