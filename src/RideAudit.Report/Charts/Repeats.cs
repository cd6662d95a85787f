using System.Collections.Immutable;
using RideAudit.Document;

namespace RideAudit.Report.Charts;

/// <summary>The repeats of a ride that its strip numbers: those of the planned session it was ridden for, else those found in it.</summary>
internal static class Repeats
{
    /// <summary>In order; empty for a ride without repeats.</summary>
    /// <param name="ride">The ride.</param>
    /// <param name="held">The planned session that it was ridden for; null without one.</param>
    public static ImmutableArray<Repeat> Of(RideEntry ride, HeldEntry? held)
    {
        if (held is { Repeats.IsEmpty: false })
            return [.. held.Repeats.Select((r, i) => (r, i)).Where(x => x.r.StartSecond is not null).Select(x => new Repeat(x.i + 1, x.r.StartSecond!.Value, x.r.StartSecond.Value + x.r.Seconds))];
        return [.. ride.Repeats.Select((s, i) => new Repeat(i + 1, s.StartSecond, s.EndSecond))];
    }

    /// <summary>A numbered stretch of a ride.</summary>
    /// <param name="Number">As printed.</param>
    /// <param name="StartSecond">First second of timer time.</param>
    /// <param name="EndSecond">Second after the last.</param>
    internal readonly record struct Repeat(int Number, int StartSecond, int EndSecond);
}
