using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Units;

namespace RideAudit.Document;

/// <summary>What a review rests on, in words that every output shares.</summary>
public static class DataWords
{
    /// <summary>How many rides have power and heart rate, how many are judged by heart rate, and the threshold power in force. What was lost stands under the verdict.</summary>
    /// <param name="review">The review.</param>
    public static string Of(ReviewDocument review)
    {
        if (review.Rides.IsEmpty)
            return "Data: no ride was read for this week.";
        var rides = review.Rides.Length;
        int power = review.Rides.Count(ride => ride.MeanPowerW is not null), heart = review.Rides.Count(ride => ride.MeanHeartRateBpm is not null);
        var channels = power == heart && power == rides
            ? rides == 1 ? "with power and heart rate" : "all with power and heart rate"
            : $"{Of(power, rides)} with power, {Of(heart, rides)} with heart rate";
        return $"Data: {Shown.Tally(rides, "ride")}, {channels}{ByHeartRate(review)}{Threshold(review)}.";
    }

    /// <summary>The limits of the bands for each channel that they were told by; empty where no ride has bands.</summary>
    /// <param name="review">The review.</param>
    public static string Cuts(ReviewDocument review)
    {
        var parts = new List<string>();
        if (review.BandCutsPercent is [var low, var high, ..] && review.Rides.Any(ride => ride.MeasuredBy == MeasureSource.Power))
            parts.Add($"low under {Shown.Number(low)}, middle under {Shown.Percent(high)} of threshold power");
        if (review.HeartRateCutsPercent is [var lower, var upper, ..])
            parts.Add($"by heart rate low under {Shown.Number(lower)}, middle under {Shown.Percent(upper)} of threshold heart rate");
        return string.Join("; ", parts);
    }

    /// <summary>Whose word a ride's kind is, where it is no measurement, and what the ride log notes of it; null where there is nothing to say.</summary>
    /// <param name="ride">The ride.</param>
    public static string? Of(RideEntry ride)
    {
        var kind = ride.Kind == RideKind.None ? null : ride.KindFrom switch
        {
            KindSource.Word => $"{Words.Of(ride.Kind)} by the coach’s word",
            KindSource.Rating => $"{Words.Of(ride.Kind)} as rated",
            _ => null,
        };
        var note = string.IsNullOrWhiteSpace(ride.Note) ? null : $"“{string.Join(' ', ride.Note.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))}”";
        string[] said = [.. new[] { kind, note }.OfType<string>()];
        return said.Length == 0 ? null : string.Join(". ", said) + ".";
    }

    /// <summary>A high ride's bouts, where it holds no repeats that would tell it: sprints and short efforts; null elsewhere.</summary>
    /// <param name="ride">The ride.</param>
    public static string? Bouts(RideEntry ride) => ride is { Kind: RideKind.High, KindFrom: KindSource.Power, BoutCount: > 1, Stretches.Length: < 2 }
        ? $"{Shown.Tally(ride.BoutCount, "bout")} far above threshold power, {Shown.Length(ride.BoutSeconds)} in all."
        : null;

    private static string Of(int some, int all) => some == 0 ? "none" : some == all ? "all" : Shown.Number(some);

    private static string ByHeartRate(ReviewDocument review) =>
        review.Rides.Count(ride => ride.MeasuredBy == MeasureSource.HeartRate) is > 0 and var count ? $"; {Shown.Number(count)} judged by heart rate" : "";

    private static string Threshold(ReviewDocument review) => review.Thresholds is { ThresholdPowerW: { } watts } thresholds
        ? $"; threshold power {Shown.Watts(watts)} ({Words.OrNull(thresholds.ThresholdFrom)})"
        : "";
}
