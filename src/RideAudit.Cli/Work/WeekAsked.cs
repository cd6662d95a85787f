using NodaTime;
using RideAudit.Cli.Output;
using RideAudit.Plan;

namespace RideAudit.Cli.Work;

/// <summary>Refuses a week of which nothing can be said yet.</summary>
internal static class WeekAsked
{
    /// <summary>Looks at the week that was asked for.</summary>
    /// <param name="week">Any day of it; null when none was asked for.</param>
    /// <param name="asOf">The date looked back from.</param>
    /// <param name="rider">For the week's first day.</param>
    /// <exception cref="UserError">The week has not begun.</exception>
    public static void Check(LocalDate? week, LocalDate asOf, Rider rider)
    {
        if (week is not { } day)
            return;
        var start = day.PlusDays(-(((int)day.DayOfWeek - (int)rider.Plan.WeekStartsOn + 7) % 7));
        if (start > asOf)
            throw new UserError($"--week {Say.Iso(day)}: that week begins on {Say.Date(start)} and has not begun as of {Say.Date(asOf)}. Give a date of a week that has, or a later --as-of.");
    }
}
