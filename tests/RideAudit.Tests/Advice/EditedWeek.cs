using NodaTime;
using RideAudit.Figures;
using RideAudit.Rules;
using RideAudit.Tests.Rules;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Tests.Advice;

/// <summary>A week under review with other rides in it, or in the weeks before it.</summary>
internal static class EditedWeek
{
    /// <summary>The week with each ride replaced by none, one or several.</summary>
    public static WeekUnderReview Each(this WeekUnderReview week, Func<RideFigures, IEnumerable<RideFigures>> instead) =>
        week with { Week = Built(week.Week, week.Week.Rides.SelectMany(instead), week) };

    /// <summary>The week with each ride of some replaced by one other.</summary>
    public static WeekUnderReview With(this WeekUnderReview week, IEnumerable<RideFigures> some, Func<RideFigures, RideFigures> instead)
    {
        var chosen = some.ToHashSet(ReferenceEqualityComparer.Instance);
        return week.Each(r => [chosen.Contains(r) ? instead(r) : r]);
    }

    /// <summary>The week without some of its rides.</summary>
    public static WeekUnderReview Without(this WeekUnderReview week, IEnumerable<RideFigures> some)
    {
        var chosen = some.ToHashSet(ReferenceEqualityComparer.Instance);
        return week.Each(r => chosen.Contains(r) ? [] : [r]);
    }

    /// <summary>The week with one ride more.</summary>
    public static WeekUnderReview And(this WeekUnderReview week, RideFigures ride) =>
        week with { Week = Built(week.Week, week.Week.Rides.Append(ride), week) };

    /// <summary>The week with the days of some dates holding nothing but a ride, or nothing.</summary>
    public static WeekUnderReview Only(this WeekUnderReview week, IReadOnlyCollection<LocalDate> dates, Func<LocalDate, RideFigures>? ride)
    {
        var others = week.Week.Rides.Where(r => !dates.Contains(r.Date));
        return week with { Week = Built(week.Week, ride is null ? others : others.Concat(dates.Select(ride)), week) };
    }

    /// <summary>The same weeks with the rides of one of them, this one or one before, longer or shorter by one factor.</summary>
    /// <param name="week">The week under review.</param>
    /// <param name="ago">0: this week; else so many weeks before.</param>
    /// <param name="factor">What every length is multiplied by.</param>
    public static WeekUnderReview Scaled(this WeekUnderReview week, int ago, double factor)
    {
        if (ago == 0)
            return week with { Week = Built(week.Week, week.Week.Rides.Select(r => r.Times(factor)), week) };
        var past = week.Past.Weeks;
        var index = past.Length - ago;
        return week with { Past = new Past(past.SetItem(index, Built(past[index], past[index].Rides.Select(r => r.Times(factor)), week))) };
    }

    /// <summary>The same ride at the same power, longer or shorter.</summary>
    public static RideFigures Times(this RideFigures ride, double factor) => ride with
    {
        DurationSeconds = ride.DurationSeconds * factor,
        ElapsedSeconds = ride.ElapsedSeconds * factor,
        Stress = ride.Stress * factor,
        Bands = new BandSeconds(ride.Bands.Low * factor, ride.Bands.Middle * factor, ride.Bands.High * factor),
    };

    /// <summary>The same ride with so much of it low, s; what is above keeps its parts.</summary>
    public static RideFigures WithLow(this RideFigures ride, double lowSeconds)
    {
        var (above, total) = (ride.Bands.AboveLow, ride.Bands.Total);
        var factor = above > 0 ? (total - lowSeconds) / above : 0;
        return ride with { Bands = new BandSeconds(lowSeconds, ride.Bands.Middle * factor, ride.Bands.High * factor) };
    }

    private static WeekFacts Built(WeekFacts week, IEnumerable<RideFigures> rides, WeekUnderReview review) =>
        Sample.Week(rides, week.StartsOn, week.LoadBefore, week.FirstRideOn, review.Plan.Limits, week.DaysThatCount, week.Exception);
}
