using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Weeks;

/// <summary>Seven local days, their sums, and the loads at their end.</summary>
public sealed record WeekFacts
{
    /// <summary>The first day.</summary>
    public required LocalDate StartsOn { get; init; }

    /// <summary>The seven days in order.</summary>
    public required ImmutableArray<DayFacts> Days { get; init; }

    /// <summary>False while the as-of date is inside the week.</summary>
    public bool Finished { get; init; } = true;

    /// <summary>Days before the as-of date; 7 in a finished week.</summary>
    public int DaysThatCount { get; private init; } = 7;

    /// <summary>What the rider file excepts the week for; null for an ordinary week.</summary>
    public ExceptionKind? Exception { get; init; }

    /// <summary>Loads at the end of the day before the week.</summary>
    public LoadState LoadBefore { get; init; }

    /// <summary>Loads at the end of the week's last day that counts.</summary>
    public required LoadState LoadAfter { get; init; }

    /// <summary>Date of the first ride of all; null when there is none.</summary>
    public LocalDate? FirstRideOn { get; init; }

    /// <summary>The last day.</summary>
    public LocalDate EndsOn => StartsOn.PlusDays(6);

    /// <summary>The rides in order of start.</summary>
    public IEnumerable<RideFigures> Rides => Days.SelectMany(d => d.Rides);

    /// <summary>Timer time ridden, s.</summary>
    public double RideSeconds { get; private init; }

    /// <summary>Timer time ridden, h.</summary>
    public double Hours => RideSeconds / 3600;

    /// <summary>Rides of any length.</summary>
    public int RideCount { get; private init; }

    /// <summary>Training stress of the rides that have one, points.</summary>
    public double Stress { get; private init; }

    /// <summary>Hours ridden without a known stress.</summary>
    public double UnknownStressHours { get; private init; }

    /// <summary>Seconds of other activity.</summary>
    public double OtherSeconds { get; private init; }

    /// <summary>Seconds in the bands.</summary>
    public BandSeconds Bands { get; private init; }

    /// <summary>The longest ride's timer time, s; 0 without rides.</summary>
    public double LongestRideSeconds { get; private init; }

    /// <summary>The week's change in chronic load, points.</summary>
    public double Ramp => LoadAfter.Chronic - LoadBefore.Chronic;

    /// <summary>Within the first 42 days since the first ride: loads are still settling.</summary>
    public bool SettlingIn => FirstRideOn is not { } first || Period.DaysBetween(first, EndsOn) < 42;

    /// <summary>Mean over population standard deviation of the seven daily stresses; null for seven equal days.</summary>
    /// <remarks>Foster 1998, Med Sci Sports Exerc 30:1164: daily mean over standard deviation. Which deviation is not said there: the population one is our choice.</remarks>
    public double? Monotony { get; private init; }

    /// <summary>The week's stress times monotony; null where monotony is.</summary>
    public double? Strain => Stress * Monotony;

    /// <summary>Builds a week from seven days.</summary>
    /// <param name="days">Seven consecutive days.</param>
    /// <param name="loadBefore">Loads at the end of the day before.</param>
    /// <param name="firstRideOn">Date of the first ride of all.</param>
    /// <param name="exception">What the rider file excepts the week for.</param>
    /// <param name="daysThatCount">Fewer than 7 for an unfinished week: loads stop there.</param>
    /// <exception cref="ArgumentException">Not seven consecutive days.</exception>
    public static WeekFacts Build(
        ImmutableArray<DayFacts> days, LoadState loadBefore, LocalDate? firstRideOn, ExceptionKind? exception = null, int daysThatCount = 7)
    {
        if (days.Length != 7 || days[6].Date != days[0].Date.PlusDays(6))
            throw new ArgumentException("A week is seven consecutive days.", nameof(days));
        var load = loadBefore;
        foreach (var day in days.AsSpan()[..daysThatCount])
            load = load.After(day.Stress);
        return new WeekFacts
        {
            StartsOn = days[0].Date,
            Days = days,
            Finished = daysThatCount == 7,
            DaysThatCount = daysThatCount,
            Exception = exception,
            LoadBefore = loadBefore,
            LoadAfter = load,
            FirstRideOn = firstRideOn,
            RideSeconds = days.Sum(d => d.RideSeconds),
            RideCount = days.Sum(d => d.Rides.Length),
            Stress = days.Sum(d => d.Stress),
            UnknownStressHours = days.Sum(d => d.UnknownStressSeconds) / 3600,
            OtherSeconds = days.Sum(d => d.OtherSeconds),
            Bands = days.Aggregate(default(BandSeconds), (sum, d) => sum + d.Bands),
            LongestRideSeconds = days.SelectMany(d => d.Rides).Select(r => r.DurationSeconds).DefaultIfEmpty(0).Max(),
            Monotony = MonotonyOf(days),
        };
    }

    private static double? MonotonyOf(ImmutableArray<DayFacts> days)
    {
        var mean = days.Average(d => d.Stress);
        var variance = days.Average(d => (d.Stress - mean) * (d.Stress - mean));
        return variance > 1e-12 ? mean / Math.Sqrt(variance) : null;
    }
}
