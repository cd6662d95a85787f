using System.Buffers;
using System.Collections.Immutable;
using RideAudit.Fit;
using RideAudit.Fit.Messages;
using RideAudit.Ingest.Tracks;
using RideAudit.Units;

namespace RideAudit.Ingest.Fit;

/// <summary>The moment of each record, event and summary, after repairs: clocks that were never set, or set in mid-ride.</summary>
/// <remarks>The times lie in a lent array, given back when disposed.</remarks>
internal sealed class FitClock : IDisposable
{
    private readonly long[] _lent;
    private readonly ClockRepair _repair;
    private readonly long _shift;

    private FitClock(long[] lent, ClockRepair repair, long shift, bool dateFromName)
    {
        _lent = lent;
        _repair = repair;
        _shift = shift;
        DateFromName = dateFromName;
    }

    /// <summary>True when the device's clock was never set and the file's name gave the date.</summary>
    public bool DateFromName { get; }

    /// <summary>False when the clock was set back in mid-ride, so that a time can belong to either clock.</summary>
    public bool EventsCount => !_repair.IsAmbiguous;

    public ImmutableArray<string> Remarks => _repair.Remarks;

    /// <summary>Records, with or without a usable time.</summary>
    public int Records => _repair.Seconds.Length;

    /// <summary>Unix seconds of all records; nothing where one has no usable time, or where the file's name gave the date.</summary>
    public ReadOnlySpan<long> AllSeconds => _shift == 0 && _repair.HasAllTimes ? _repair.Seconds : [];

    /// <summary>Unix seconds of a record.</summary>
    /// <param name="record">Its place among the records.</param>
    /// <param name="second">The second, where there is one.</param>
    /// <returns>False for a record without a usable time.</returns>
    public bool TryGetSecond(int record, out long second)
    {
        second = _repair.Seconds[record];
        if (second == ClockRepair.NoTime)
            return false;
        second += _shift;
        return true;
    }

    /// <summary>Unix seconds of a time in a summary or event.</summary>
    public long Unix(uint fitSeconds) => _repair.Map(FitTime.ToUnixSeconds(fitSeconds)) + _shift;

    /// <summary>Repairs a part's clock.</summary>
    /// <param name="part">Any part, also one without a record that has a time.</param>
    /// <param name="name">The file's name, for its date.</param>
    /// <param name="context">The rider, for the zone of that date.</param>
    /// <param name="before">The clock of the part before, which may count on from the same power-on; null without one.</param>
    /// <returns>Null when the clock was never set and the file's name has no date.</returns>
    public static FitClock? Of(FitPart part, string name, IngestContext context, FitClock? before)
    {
        using var phase = Phase.Begin("clock");
        var times = part.Records.Timestamps;
        var lent = ArrayPool<long>.Shared.Rent(times.Length);
        var seconds = lent.AsMemory(0, times.Length);
        for (var i = 0; i < times.Length; i++)
            lent[i] = times[i] == RecordChannels.NoTime ? ClockRepair.NoTime : FitTime.ToUnixSeconds(times[i]);
        var repair = ClockRepair.Of(seconds, TimerOf(part));
        if (FirstSecond(part, repair) is not { } first || IsDate(Latest(repair) ?? first))
            return new FitClock(lent, repair, 0, false);
        if (before is { DateFromName: true } && Latest(before._repair) is { } end && first >= end)
            return new FitClock(lent, repair, before._shift, true);
        if (before is { DateFromName: true } || NameDates.In(name) is not { } named)
        {
            ArrayPool<long>.Shared.Return(lent);
            return null;
        }
        return new FitClock(lent, repair, context.AtLocal(named.At).ToUnixTimeSeconds() - first, true);
    }

    public void Dispose() => ArrayPool<long>.Shared.Return(_lent);

    /// <summary>The timer ran from one moment to another when it was started before, and no stop lies between.</summary>
    private static Func<long, long, bool> TimerOf(FitPart part)
    {
        var timer = part.Events
            .Where(e => e.Timestamp is not null && (e.StartsTimer || e.StopsTimer))
            .Select(e => (At: FitTime.ToUnixSeconds(e.Timestamp!.Value), e.StartsTimer))
            .ToArray();
        return (from, to) =>
            Array.Exists(timer, e => e.StartsTimer && e.At <= from)
            && !Array.Exists(timer, e => !e.StartsTimer && e.At >= from && e.At <= to);
    }

    private static long? FirstSecond(FitPart part, ClockRepair repair) =>
        repair.Seconds.IndexOfAnyExcept(ClockRepair.NoTime) is >= 0 and var first
            ? repair.Seconds[first]
            : (part.Sessions.FirstOrDefault(s => s.StartTime is not null)?.StartTime is { } start ? FitTime.ToUnixSeconds(start) : null);

    private static long? Latest(ClockRepair repair) => repair.Seconds.LastIndexOfAnyExcept(ClockRepair.NoTime) is >= 0 and var last ? repair.Seconds[last] : null;

    private static bool IsDate(long unixSeconds) => unixSeconds >= FitTime.ToUnixSeconds(FitTime.FirstDate);
}
