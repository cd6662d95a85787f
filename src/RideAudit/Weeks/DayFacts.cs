using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Weeks;

/// <summary>One local day of a week.</summary>
public sealed record DayFacts
{
    private static readonly Limits Defaults = new();

    /// <summary>The local date.</summary>
    public required LocalDate Date { get; init; }

    /// <summary>What the day was.</summary>
    public required DayKind Kind { get; init; }

    /// <summary>Its rides in order of start.</summary>
    public required ImmutableArray<RideFigures> Rides { get; init; }

    /// <summary>Seconds of activity that is not cycling.</summary>
    public double OtherSeconds { get; init; }

    /// <summary>Timer time ridden, s.</summary>
    public double RideSeconds { get; init; }

    /// <summary>Training stress of the rides that have one, points.</summary>
    public double Stress { get; init; }

    /// <summary>Seconds ridden without a known stress.</summary>
    public double UnknownStressSeconds { get; init; }

    /// <summary>Seconds in the bands.</summary>
    public BandSeconds Bands { get; init; }

    /// <summary>Hard sessions with a high ride in them.</summary>
    /// <remarks>A hard ride that starts three hours or more after the end of the one before it is a session of its own; nearer ones are one session.</remarks>
    public int HighSessions { get; init; }

    /// <summary>Hard sessions without a high ride.</summary>
    public int ThresholdSessions { get; init; }

    /// <summary>A high or threshold day.</summary>
    public bool IsHard => Kind is DayKind.High or DayKind.Threshold;

    /// <summary>A rest or recovery day.</summary>
    public bool IsRestOrRecovery => Kind is DayKind.Rest or DayKind.Recovery;

    /// <summary>Builds a day from its rides.</summary>
    /// <param name="date">The local date.</param>
    /// <param name="rides">The rides that start on it, in any order.</param>
    /// <param name="otherSeconds">Seconds of other activity.</param>
    /// <param name="limits">The limits in force; null: the defaults.</param>
    public static DayFacts Build(LocalDate date, IEnumerable<RideFigures> rides, double otherSeconds = 0, Limits? limits = null)
    {
        var ordered = rides.OrderBy(r => r.StartsAt.ToInstant()).ThenBy(r => r.File, StringComparer.Ordinal).ToImmutableArray();
        var bands = ordered.Aggregate(default(BandSeconds), (sum, r) => sum + r.Bands);
        var seconds = ordered.Sum(r => r.DurationSeconds);
        var inForce = limits ?? Defaults;
        var (high, threshold) = HardSessions(ordered, inForce);
        return new DayFacts
        {
            Date = date,
            Rides = ordered,
            OtherSeconds = otherSeconds,
            RideSeconds = seconds,
            Stress = ordered.Sum(r => r.Stress ?? 0),
            UnknownStressSeconds = ordered.Sum(r => r.Stress is null ? r.DurationSeconds : 0),
            Bands = bands,
            HighSessions = high,
            ThresholdSessions = threshold,
            Kind = KindOf(ordered, seconds, bands, otherSeconds, inForce),
        };
    }

    private static DayKind KindOf(ImmutableArray<RideFigures> rides, double seconds, BandSeconds bands, double otherSeconds, Limits limits)
    {
        if (rides.IsEmpty)
            return !Close.Below(AsShown.Minutes(otherSeconds), limits.OtherActivityMinutes) ? DayKind.Recovery : DayKind.Rest;
        var hardest = rides.Max(r => r.Kind) switch
        {
            RideKind.High => DayKind.High,
            RideKind.Threshold => DayKind.Threshold,
            RideKind.Long => DayKind.Long,
            RideKind.Unrated => DayKind.Unrated,
            RideKind.Endurance => DayKind.Endurance,
            _ => DayKind.Recovery,
        };
        var shortAndEasy = !Close.Above(AsShown.Minutes(seconds), limits.ShortDayMinutes)
            && bands.LowShare is { } low && !Close.Below(AsShown.Percent(low), 100 * limits.ShortDayLowShare);
        // With few planned hours the long ride is short as well: such a day is an easy day all the same.
        return hardest is DayKind.Endurance or DayKind.Long && shortAndEasy ? DayKind.Recovery : hardest;
    }

    private static (int High, int Threshold) HardSessions(ImmutableArray<RideFigures> rides, Limits limits)
    {
        int high = 0, threshold = 0;
        RideFigures? last = null;
        var highSession = false;
        foreach (var ride in rides)
        {
            if (!ride.IsHard)
                continue;
            var isHigh = ride.Kind == RideKind.High;
            var ownSession = last is null || !Close.Below((ride.StartsAt.ToInstant() - last.EndsAt.ToInstant()).TotalHours, limits.SecondHardRideHours);
            if (ownSession)
                (high, threshold) = isHigh ? (high + 1, threshold) : (high, threshold + 1);
            else if (isHigh && !highSession)
                (high, threshold) = (high + 1, threshold - 1);
            highSession = isHigh || (highSession && !ownSession);
            last = ride;
        }
        return (high, threshold);
    }
}
