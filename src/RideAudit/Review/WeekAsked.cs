using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Review;

/// <summary>Looks at the week that was asked for before anything is read.</summary>
public static class WeekAsked
{
    /// <summary>Why nothing can be said of the week yet; null when it has begun or none was asked for.</summary>
    /// <param name="request">The week and the as-of date.</param>
    /// <param name="rider">For the week's first day.</param>
    public static string? Refusal(ReviewRequest request, Rider rider)
    {
        var asOf = request.AsOf ?? request.Today;
        return request.WeekOf is { } day && WeekTable.StartOf(day, rider.Plan.WeekStartsOn) is var start && start > asOf
            ? $"{Shown.Iso(day)}: that week begins on {Shown.FullDate(start)} and has not begun as of {Shown.FullDate(asOf)}. Give a date of a week that has, or a later as-of date."
            : null;
    }
}
