using RideAudit.Document;

namespace RideAudit.Report.Charts;

/// <summary>One scale of watts and one of minutes for all ride strips of a week, so that they can be compared.</summary>
/// <param name="TopW">Power at the top of every strip, W.</param>
/// <param name="Seconds">Length of the longest ride, s: the whole width.</param>
internal readonly record struct StripScale(double TopW, double Seconds)
{
    private const double Air = 1.04;
    private const double OverThreshold = 1.15;

    /// <summary>The scale of a review's rides.</summary>
    public static StripScale Of(ReviewDocument review, ReviewTraces traces)
    {
        double top = 1;
        foreach (var ride in review.Rides)
        {
            var most = traces.Of(ride.File) is { } trace ? trace.Power30W.Where(float.IsFinite).DefaultIfEmpty(0).Max() : 0;
            top = Math.Max(top, Math.Max(most * Air, most > 0 ? (ride.ThresholdPowerW ?? 0) * OverThreshold : 0));
        }

        return new StripScale(top, Math.Max(1, review.Rides.Select(ride => ride.DurationSeconds).DefaultIfEmpty(1).Max()));
    }
}
