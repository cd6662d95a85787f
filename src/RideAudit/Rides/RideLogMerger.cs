using System.Collections.Immutable;
using System.Globalization;
using NodaTime;

namespace RideAudit.Rides;

/// <summary>Brings ride log rows and recorded rides together: a row for a recorded ride gives it its rating, kind and note, any other row is a ride of its own.</summary>
/// <remarks>
/// A row speaks of the file it names; else of the ride, or the part of a ride, that starts when it says; else of the ride with its length; else, in order, of a ride's parts.
/// What is then left over on a day whose rides are recorded would count a ride twice: it adds no hours, and the ride says so.
/// </remarks>
internal sealed class RideLogMerger
{
    private const int SameStartMinutes = 30;
    private const double SameLengthShare = 0.25;

    private readonly List<Ride> _recorded;
    private readonly HashSet<int> _spokenOf = [];
    private readonly HashSet<(int Ride, int Part)> _partsSpokenOf = [];
    private readonly List<Ride> _unrecorded = [];

    private RideLogMerger(ImmutableArray<Ride> rides) => _recorded = [.. rides];

    /// <summary>Merges a log into rides.</summary>
    /// <param name="rides">Recorded rides in order of start; none for a log alone.</param>
    /// <param name="log">Rows in the order of the log.</param>
    /// <returns>All rides in order of start.</returns>
    public static ImmutableArray<Ride> Merge(ImmutableArray<Ride> rides, ImmutableArray<LoggedRide> log)
    {
        if (log.IsEmpty)
            return rides;
        var merger = new RideLogMerger(rides);
        merger.Take(WithoutRepeats(log));
        return [.. merger._recorded.Concat(merger._unrecorded).OrderBy(r => r.StartsAt.ToInstant()).ThenBy(r => r.File, StringComparer.Ordinal)];
    }

    /// <summary>The same row in a second log is the same ride.</summary>
    private static List<LoggedRide> WithoutRepeats(ImmutableArray<LoggedRide> log)
    {
        static string LogOf(LoggedRide row) => row.File[..Math.Max(0, row.File.LastIndexOf('#'))];
        var first = new Dictionary<(LocalDate?, LocalTime?, double?), string>();
        var rows = new List<LoggedRide>();
        foreach (var row in log)
        {
            var key = (row.Date, row.Start, row.Minutes);
            if (row.RideFile is not null || row.Minutes is null || first.TryAdd(key, LogOf(row)) || first[key] == LogOf(row))
                rows.Add(row);
        }
        return rows;
    }

    private void Take(List<LoggedRide> rows)
    {
        rows = rows.FindAll(r => !NamesItsRide(r));
        rows = rows.FindAll(r => !(r.Start is not null && (StartsARide(r) || StartsAPart(r))));
        rows = rows.FindAll(r => r.Start is not null || r.Minutes is null || !HasARidesLength(r));
        rows = rows.FindAll(r => r.Start is not null || r.Minutes is null || !IsTheNextPart(r));
        foreach (var day in rows.Where(r => r.Minutes is null && r.RideFile is null && r.Date is not null).GroupBy(r => r.Date!.Value))
            SpeakOfTheDay(day.Key, [.. day]);
        foreach (var row in rows.Where(r => r.Minutes is not null && r.Date is not null))
            if (!WouldCountTwice(row))
                _unrecorded.Add(Unrecorded(row));
    }

    private bool NamesItsRide(LoggedRide row)
    {
        if (row.RideFile is not { } file)
            return false;
        var named = Parts().Where(p => RecordingNames.Match(p.Part.File, file)).ToArray();
        if (named.Length == 0)
            return false;
        _partsSpokenOf.Add((named[0].Ride, named[0].Index));
        SpeakOf(named[0].Ride, row);
        return true;
    }

    private bool StartsARide(LoggedRide row) => SpeakOfNearest(row, Free(row.Date).Where(i => IsNear(_recorded[i].StartsAt.TimeOfDay, row)));

    private bool StartsAPart(LoggedRide row)
    {
        foreach (var (ride, index, part) in Parts())
            if (part.Start.Date == row.Date && IsNear(part.Start.TimeOfDay, row) && _partsSpokenOf.Add((ride, index)))
            {
                SpeakOf(ride, row);
                return true;
            }
        return false;
    }

    private bool HasARidesLength(LoggedRide row) => SpeakOfNearest(row, Free(row.Date).Where(i => HasLength(_recorded[i].TimerSeconds, row)));

    /// <summary>Warm-up, race and cool-down are one ride and three rows: in the order they were ridden.</summary>
    private bool IsTheNextPart(LoggedRide row)
    {
        foreach (var (ride, index, part) in Parts())
            if (part.Start.Date == row.Date && HasLength(part.TimerSeconds, row)
                && !_partsSpokenOf.Any(p => p.Ride == ride && p.Part >= index) && (!_spokenOf.Contains(ride) || _partsSpokenOf.Any(p => p.Ride == ride)))
            {
                _partsSpokenOf.Add((ride, index));
                SpeakOf(ride, row);
                return true;
            }
        return false;
    }

    /// <summary>Rows without start and length: as many as rides, they are in their order; else the longest ride is meant first.</summary>
    private void SpeakOfTheDay(LocalDate day, LoggedRide[] rows)
    {
        int[] rides = [.. Free(day)];
        if (rides.Length != rows.Length)
            rides = [.. rides.OrderByDescending(i => _recorded[i].TimerSeconds)];
        foreach (var (ride, row) in rides.Zip(rows))
            SpeakOf(ride, row);
    }

    private bool WouldCountTwice(LoggedRide row)
    {
        int[] free = [.. Free(row.Date)];
        int[] meant = row.Start is { } start
            ? [.. Enumerable.Range(0, _recorded.Count).Where(i => RidesAt(_recorded[i], row.Date!.Value.At(start), row.Minutes!.Value)).Take(1)]
            : [.. free.OrderBy(i => Math.Abs(_recorded[i].TimerSeconds / 60 - row.Minutes!.Value)).Take(1)];
        if (meant is not [var ride])
            return false;
        if (row.Start is null ? free.Length == 1 : free.Contains(ride))
            SpeakOf(ride, row);
        _spokenOf.Add(ride);
        _recorded[ride] = _recorded[ride] with
        {
            Remarks = [.. _recorded[ride].Remarks, string.Create(CultureInfo.InvariantCulture,
                $"{row.File} of the ride log ({row.Minutes:0} min) is taken to be this ride and adds no hours: if it was another one, write its start into the log.")],
        };
        return true;
    }

    private bool SpeakOfNearest(LoggedRide row, IEnumerable<int> rides)
    {
        int[] fitting = [.. rides];
        if (fitting.Length == 0)
            return false;
        SpeakOf(fitting.MinBy(i => Math.Abs(_recorded[i].TimerSeconds / 60 - (row.Minutes ?? 0))), row);
        return true;
    }

    /// <summary>Of several rows for one ride the hardest word and rating count, and all notes.</summary>
    private void SpeakOf(int index, LoggedRide row)
    {
        var ride = _recorded[index];
        var isFirst = _spokenOf.Add(index);
        _recorded[index] = ride with
        {
            Rating = isFirst ? row.Rating ?? ride.Rating : Hardest(ride.Rating, row.Rating),
            GivenKind = Hardest(ride.GivenKind, row.Kind),
            Note = ride.Note is null || row.Note is null ? ride.Note ?? row.Note : $"{ride.Note}; {row.Note}",
        };
    }

    private static T? Hardest<T>(T? a, T? b) where T : struct =>
        a is null ? b : b is null || Comparer<T>.Default.Compare(a.Value, b.Value) >= 0 ? a : b;

    private IEnumerable<int> Free(LocalDate? day) =>
        Enumerable.Range(0, _recorded.Count).Where(i => _recorded[i].Date == day && !_spokenOf.Contains(i));

    private IEnumerable<(int Ride, int Index, Ride.Part Part)> Parts() =>
        _recorded.SelectMany((ride, i) => ride.RecordedParts.Select((part, k) => (i, k, part)));

    private static bool IsNear(LocalTime start, LoggedRide row) =>
        Math.Abs(Period.Between(row.Start!.Value, start, PeriodUnits.Minutes).Minutes) <= SameStartMinutes;

    private static bool HasLength(double seconds, LoggedRide row) => Math.Abs(seconds / 60 - row.Minutes!.Value) <= SameLengthShare * row.Minutes.Value;

    private static bool RidesAt(Ride ride, LocalDateTime start, double minutes) =>
        start < ride.StartsAt.LocalDateTime.PlusSeconds((long)ride.ElapsedSeconds) && start.PlusSeconds((long)(60 * minutes)) > ride.StartsAt.LocalDateTime;

    private static Ride Unrecorded(LoggedRide row) => new()
    {
        File = row.File,
        Parts = [row.File],
        StartsAt = row.Date!.Value.At(row.Start ?? LocalTime.Noon).WithOffset(row.Offset),
        Sport = RideSport.Cycling,
        Grid = SampleGrid.Empty,
        TimerSeconds = row.Minutes!.Value * 60,
        ElapsedSeconds = row.Minutes.Value * 60,
        Rating = row.Rating,
        GivenKind = row.Kind,
        Note = row.Note,
        Logged = row.Figures,
        Remarks = row.Start is null ? ["From the ride log, no start time: noon is taken."] : ["From the ride log."],
    };
}
