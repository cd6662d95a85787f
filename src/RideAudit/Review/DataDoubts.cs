using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Rules;
using RideAudit.Units;

namespace RideAudit.Review;

/// <summary>Says on page one what makes the week's verdicts less sure than they look.</summary>
internal static class DataDoubts
{
    /// <summary>One sentence a doubt, the most serious first; empty when there is none.</summary>
    public static IEnumerable<string> Of(WeekUnderReview week)
    {
        var rides = week.Week.Rides.ToArray();
        if (rides.Any(r => r.Threshold is { IsEstimate: true }))
            yield return "Threshold power is an estimate: put yours in the rider file.";
        var unrated = rides.Where(r => r.Kind == RideKind.Unrated).ToArray();
        if (unrated.Length > 0)
            yield return $"Nothing could rate {Unrated(unrated)}.";
    }

    private static string Unrated(RideFigures[] rides)
    {
        var length = Shown.Length(rides.Sum(r => r.DurationSeconds));
        return rides.Length == 1 ? $"one ride of {length}" : $"{Shown.Count(rides.Length, "ride")} of {length} in all";
    }
}
