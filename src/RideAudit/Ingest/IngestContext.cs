using NodaTime;
using RideAudit.Plan;
using RideAudit.Rides;

namespace RideAudit.Ingest;

/// <summary>What every file reader needs to know of the rider.</summary>
internal sealed record IngestContext(Rider Rider, DateTimeZone MachineZone)
{
    public DateTimeZone Zone => Rider.TimeZone ?? MachineZone;

    public OffsetSource ZoneSource => Rider.TimeZone is null ? OffsetSource.MachineZone : OffsetSource.RiderZone;

    public Offset OffsetAt(Instant instant) => Zone.GetUtcOffset(instant);

    /// <summary>A local time in the rider's zone; in a spring gap the hour after, in autumn the earlier reading.</summary>
    public Instant AtLocal(LocalDateTime local) => Zone.AtLeniently(local).ToInstant();
}
