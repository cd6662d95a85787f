using System.Collections.Immutable;
using NodaTime;
using RideAudit.Plan;
using RideAudit.Rides;

namespace RideAudit.Ingest;

/// <summary>What the reader of one file may ask of the rider. It remembers whether anything was asked.</summary>
internal sealed class IngestContext(Rider rider, DateTimeZone machineZone)
{
    /// <summary>True once an answer was given that another rider file could give otherwise.</summary>
    public bool WasAsked { get; private set; }

    /// <summary>Cadence and speed, which no figure is computed from, are kept as well.</summary>
    public bool KeepsAll { get; init; } = true;

    public DateTimeZone Zone => Asked().TimeZone ?? machineZone;

    public bool ZoneIsTheMachines => Asked().TimeZone is null;

    public OffsetSource ZoneSource => ZoneIsTheMachines ? OffsetSource.MachineZone : OffsetSource.RiderZone;

    /// <summary>Channel name → header, as the rider file maps them.</summary>
    public ImmutableDictionary<string, string> CsvColumns => Asked().CsvColumns;

    public Offset OffsetAt(Instant instant) => Zone.GetUtcOffset(instant);

    /// <summary>A local time in the rider's zone; in a spring gap the hour after, in autumn the earlier reading.</summary>
    public Instant AtLocal(LocalDateTime local) => Zone.AtLeniently(local).ToInstant();

    /// <summary>The same rider asked afresh.</summary>
    public IngestContext ForNextFile() => new(rider, machineZone) { KeepsAll = KeepsAll };

    private Rider Asked()
    {
        WasAsked = true;
        return rider;
    }
}
