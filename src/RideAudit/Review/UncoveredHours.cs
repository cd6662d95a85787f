using RideAudit.Formatting;
using RideAudit.Weeks;

namespace RideAudit.Review;

/// <summary>Names the rides whose hours no training stress covers.</summary>
internal static class UncoveredHours
{
    /// <summary>One sentence; null when every ride of the week has a stress.</summary>
    public static string? Sentence(WeekFacts week)
    {
        var uncovered = week.Rides.Where(r => r.Stress is null).ToArray();
        if (uncovered.Length == 0)
            return null;
        var named = string.Join(", ", uncovered.Select(r => r.File));
        return $"No training stress covers {Shown.Length(uncovered.Sum(r => r.DurationSeconds))} of the week’s {Shown.Length(week.RideSeconds)}: without power and threshold power, heart rate with resting, highest and threshold heart rate, or a rating, nothing could say ({named}).";
    }
}
