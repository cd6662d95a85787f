using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Units;

namespace RideAudit.Report.Words;

/// <summary>What the week's verdicts rest on, in one line.</summary>
internal static class DataLine
{
    /// <summary>How many rides have power and heart rate, the threshold power in force, and how many files could not be used.</summary>
    public static string Of(ReviewDocument review)
    {
        if (review.Rides.IsEmpty)
            return "Data: no ride was read for this week." + Unused(review);
        int rides = review.Rides.Length;
        int power = review.Rides.Count(ride => ride.MeanPowerW is not null), heart = review.Rides.Count(ride => ride.MeanHeartRateBpm is not null);
        string channels = power == rides && heart == rides ? "all with power and heart rate" : $"{Shown.Number(power)} with power, {Shown.Number(heart)} with heart rate";
        return $"Data: {Shown.Tally(rides, "ride")}, {(rides == 1 && power == 1 && heart == 1 ? "with power and heart rate" : channels)}{Threshold(review)}.{Unused(review)}{Unrated(review)}";
    }

    private static string Threshold(ReviewDocument review) => review.Thresholds is { ThresholdPowerW: { } watts } thresholds
        ? $"; threshold power {Shown.Watts(watts)} ({Formatting.Words.OrNull(thresholds.ThresholdFrom)})"
        : "";

    private static string Unused(ReviewDocument review)
    {
        int files = review.Notices.Count(notice => notice.Unusable);
        return files == 0 ? "" : $" {Shown.Tally(files, "file")} not used.";
    }

    private static string Unrated(ReviewDocument review)
    {
        int rides = review.Rides.Count(ride => ride.Kind == RideKind.Unrated);
        return rides == 0 ? "" : $" Nothing could rate {Shown.Tally(rides, "ride")}.";
    }
}
