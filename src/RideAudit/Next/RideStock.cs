using NodaTime;
using RideAudit.Plan;
using RideAudit.Plan.Blocks;
using RideAudit.Plan.Table;
using RideAudit.Sessions;

namespace RideAudit.Next;

/// <summary>Sessions of every length that a layout asks for, each ridden on paper once.</summary>
/// <param name="rider">The rider file, for the coach's own sessions.</param>
/// <param name="limits">The limits that kinds are read by.</param>
/// <param name="date">A date, for the thresholds in force.</param>
internal sealed class RideStock(Rider rider, Limits limits, LocalDate date)
{
    private readonly Dictionary<(string?, SessionPurpose?, SessionBlocks, int), StockRide?> _made = [];
    private readonly SessionBook _book = new(rider, limits);

    /// <summary>The coach's own sessions of a kind, as far as their blocks are judged as it.</summary>
    public IEnumerable<OwnSession> OwnOf(PlannedKind kind) =>
        rider.Sessions.IsDefaultOrEmpty ? [] : rider.Sessions.Where(s => s.Kind == kind && _book.JudgedOtherwise(s, date) is null);

    /// <summary>A session of the library.</summary>
    public StockRide? Of(LibrarySession session, int minutes) => Make(session.Name, session.Purpose, session.Blocks, minutes);

    /// <summary>A session of the coach's own.</summary>
    public StockRide? Of(OwnSession session, int minutes) => Make(session.Session, null, session.Blocks, minutes);

    /// <summary>An easy ride of a purpose: the coach's own session where there is one.</summary>
    public StockRide? Easy(SessionPurpose purpose, int minutes)
    {
        var kind = purpose switch { SessionPurpose.Recovery => PlannedKind.Recovery, SessionPurpose.Long => PlannedKind.Long, _ => PlannedKind.Endurance };
        if (minutes <= 0)
            return null;
        return OwnOf(kind).Select(s => Of(s, minutes)).FirstOrDefault(r => r is not null)
            ?? Of(SessionLibrary.All.First(s => s.Purpose == purpose), minutes);
    }

    /// <summary>A ride that stands in the rider file.</summary>
    public StockRide? Of(FixedRide ride) => Standing(ride.Session, ride.Kind, ride.Minutes, null);

    /// <summary>A row of a plan table; null for rest and for an event of unknown length.</summary>
    public StockRide? Of(PlannedSession row) => row.IsRest || row.Minutes is not { } minutes ? null : Standing(row.Session, row.Kind, minutes, row.Blocks);

    private StockRide? Standing(string? name, PlannedKind kind, int minutes, SessionBlocks? own)
    {
        var blocks = own ?? (name is null ? null : _book.Find(name));
        if (blocks is not null && Make(name, null, blocks, minutes) is { } written)
            return written with { Stands = true };
        return Make(name, null, UsualSession.Of(kind, minutes, rider.Experience), minutes) is { } usual ? usual with { Stands = true, IsUsual = true } : null;
    }

    private StockRide? Make(string? name, SessionPurpose? purpose, SessionBlocks blocks, int minutes)
    {
        // Rows of one name may have other blocks each.
        var key = (name, purpose, blocks, minutes);
        if (_made.TryGetValue(key, out var there))
            return there;
        var ride = FittedSession.Fit(blocks, minutes) is { } fitted
            ? new StockRide(name, purpose, fitted, PlannedTrace.FiguresOf(fitted, date, rider, limits))
            : null;
        _made[key] = ride;
        return ride;
    }
}
