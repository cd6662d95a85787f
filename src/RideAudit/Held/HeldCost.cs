using NodaTime;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Units;

namespace RideAudit.Held;

/// <summary>What it costs to take rides for a planned session: the least total over the week says what was ridden for what.</summary>
/// <remarks>Common practice, no source.</remarks>
internal static class HeldCost
{
    /// <summary>A session that nothing was ridden for.</summary>
    public const double SessionLeft = 6;

    /// <summary>A ride that was ridden for no session.</summary>
    public const double RideLeft = 1;

    private const double DayApart = 2;
    private const double NeighbouringKind = 1;
    private const double OtherKind = 4;

    /// <summary>Several rides of a day stand for a long one from this share of its length on.</summary>
    private const double TogetherLong = 0.8;

    private static readonly RideKind[] Order = [RideKind.Recovery, RideKind.Endurance, RideKind.Long, RideKind.Threshold, RideKind.High];

    public static double Of(PlannedSession session, RiddenGroup group)
    {
        var apart = Math.Abs(Period.DaysBetween(session.Date, group.Date));
        var length = session.Minutes is { } minutes && group.Minutes > 0 ? Math.Abs(Math.Log(group.Minutes / minutes)) : 0;
        return DayApart * apart + OfKind(session, group) + length;
    }

    /// <summary>What it costs that two sessions were ridden on each other's days.</summary>
    public static double OfSwap(PlannedSession one, RiddenGroup forOne, PlannedSession other, RiddenGroup forOther) =>
        Of(one, forOne) + Of(other, forOther) - DayApart * Math.Abs(Period.DaysBetween(one.Date, other.Date));

    /// <summary>How hard a kind is meant or ridden, easy to hard; null when nobody knows.</summary>
    /// <remarks>Long and endurance are the same effort: their difference is length, and is said as such.</remarks>
    public static int? Rank(RideKind? kind) => kind switch
    {
        RideKind.Recovery or RideKind.None => 0,
        RideKind.Endurance or RideKind.Long => 1,
        RideKind.Threshold => 2,
        RideKind.High => 3,
        _ => null,
    };

    private static double OfKind(PlannedSession session, RiddenGroup group)
    {
        // An event is what the race makes of it; a ride that nothing tells of may have been anything.
        if (PlannedKinds.RiddenAs(session.Kind) is not { } meant)
            return group.Kind is RideKind.Recovery or RideKind.None ? OtherKind : group.Kind == RideKind.Endurance ? NeighbouringKind : 0;
        if (group.Kind == RideKind.Unrated)
            return NeighbouringKind;
        var ridden = group.Kind == RideKind.None ? RideKind.Recovery : group.Kind;
        if (meant == RideKind.Long && ridden == RideKind.Endurance && group.Rides.Length > 1 && group.Minutes >= TogetherLong * session.Minutes)
            return 0;
        return Math.Abs(Array.IndexOf(Order, meant) - Array.IndexOf(Order, ridden)) switch { 0 => 0, 1 => NeighbouringKind, _ => OtherKind };
    }
}
