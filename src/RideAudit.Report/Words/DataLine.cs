using RideAudit.Document;
using RideAudit.Formatting;

namespace RideAudit.Report.Words;

/// <summary>What the week's verdicts rest on, in one line.</summary>
internal static class DataLine
{
    /// <summary>How many rides have power and heart rate, and the threshold power in force; what was lost stands under the verdict.</summary>
    public static string Of(ReviewDocument review)
    {
        if (review.Rides.IsEmpty)
            return "Data: no ride was read for this week.";
        var rides = review.Rides.Length;
        int power = review.Rides.Count(ride => ride.MeanPowerW is not null), heart = review.Rides.Count(ride => ride.MeanHeartRateBpm is not null);
        var channels = power == rides && heart == rides ? "all with power and heart rate" : $"{Shown.Number(power)} with power, {Shown.Number(heart)} with heart rate";
        return $"Data: {Shown.Tally(rides, "ride")}, {(rides == 1 && power == 1 && heart == 1 ? "with power and heart rate" : channels)}{Threshold(review)}.";
    }

    private static string Threshold(ReviewDocument review) => review.Thresholds is { ThresholdPowerW: { } watts } thresholds
        ? $"; threshold power {Shown.Watts(watts)} ({Formatting.Words.OrNull(thresholds.ThresholdFrom)})"
        : "";
}
