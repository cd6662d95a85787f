using NodaTime;
using RideAudit.Rides;

namespace RideAudit.Ingest.Tracks;

/// <summary>Decides on a recording's offset from UTC: the file's own where it can be one, else the rider's zone, else the machine's.</summary>
internal static class LocalOffsets
{
    private const long StepSeconds = 900;
    private const long LeastSeconds = -12 * 3600;
    private const long MostSeconds = 14 * 3600;

    /// <summary>The first offset of the file's own that can be one.</summary>
    /// <param name="stored">Local minus universal time as the file tells it, s, most trusted first.</param>
    /// <param name="start">The start of the riding.</param>
    /// <param name="context">The rider.</param>
    /// <remarks>0 also stands for "never set": where the rider's zone says otherwise it is not believed.</remarks>
    public static (Offset Offset, OffsetSource From) Decide(IEnumerable<long?> stored, Instant start, IngestContext context)
    {
        foreach (var seconds in stored)
            if (seconds is { } s && s % StepSeconds == 0 && s is >= LeastSeconds and <= MostSeconds && (s != 0 || context.OffsetAt(start) == Offset.Zero))
                return (Offset.FromSeconds((int)s), OffsetSource.File);
        return (context.OffsetAt(start), context.ZoneSource);
    }
}
