using System.Runtime.CompilerServices;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Sessions;
using RideAudit.Units;

namespace RideAudit.Next;

/// <summary>A session of one length, with the figures it has when it is ridden as written; it may stand on any day.</summary>
/// <param name="Name">Its name; null for a ride that has none.</param>
/// <param name="Purpose">What the library has it for; null for one that is not of the library.</param>
/// <param name="Fitted">Its blocks, fitted to its length.</param>
/// <param name="Stands">It was not laid out: it stands in the rider file or the plan table.</param>
/// <param name="IsUsual">Nobody said what to ride: its blocks are what such a ride usually is, for the rules to judge and not to be told.</param>
internal sealed record StockRide(string? Name, SessionPurpose? Purpose, FittedSession Fitted, RideFigures Figures, bool Stands = false, bool IsUsual = false)
{
    // What real riding adds to even blocks on paper, after the simulated rides of the tests (common practice, no source):
    // an uneven road takes some easy time above the low band and makes all riding cost a little more.
    private const double LowKept = 0.90;
    private const double LowKeptAroundWork = 0.95;
    private const double EasyCosts = 1.10;
    private const double HardCosts = 1.05;

    // Easy rides at the top of what a windy week makes of them, the days that should stand out on quiet roads.
    private const double LevellingCosts = 1.14;

    // One ride at the top of its range on a windy day, the others as laid out: what a day may cost beyond the road.
    private const double HeavyDayCosts = 1.08;

    public int Minutes => Fitted.Minutes;

    public bool IsHard => Figures.IsHard;

    /// <summary>The figures on a day.</summary>
    public RideFigures On(LocalDate date) => Figures with { File = Named(date), StartsAt = (date + LocalTime.Noon).WithOffset(Offset.Zero) };

    /// <summary>The figures on a day, ridden on a road.</summary>
    public RideFigures On(LocalDate date, Road road)
    {
        if (road == Road.Paper)
            return On(date);
        var kept = IsHard ? LowKeptAroundWork : Figures.Kind == RideKind.Recovery ? 1 : LowKept;
        var leaves = Figures.Bands.Low * (1 - kept);
        return On(date) with
        {
            Stress = Figures.Stress * road switch
            {
                Road.Levelling => IsHard || Figures.LongEnough ? 1 : LevellingCosts,
                Road.Heavy => (IsHard ? HardCosts : EasyCosts) * HeavyDayCosts,
                _ => IsHard ? HardCosts : EasyCosts,
            },
            Bands = Figures.Bands + new BandSeconds(-leaves, leaves, 0),
        };
    }

    /// <summary>What the ride is, in the words of a plan.</summary>
    public PlannedKind Kind => Figures.Kind switch
    {
        RideKind.High => PlannedKind.High,
        RideKind.Threshold => PlannedKind.Threshold,
        RideKind.Long => PlannedKind.Long,
        RideKind.Recovery => PlannedKind.Recovery,
        _ => PlannedKind.Endurance,
    };

    /// <summary>A ride is itself: two of the same figures may still be told apart.</summary>
    public bool Equals(StockRide? other) => ReferenceEquals(this, other);

    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    private string Named(LocalDate date) => $"planned {date.Year:0000}-{date.Month:00}-{date.Day:00} {Name}";
}
