using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Formatting;

namespace RideAudit.Review;

/// <summary>Says what the season's series come to. Nothing is claimed from fewer than three points.</summary>
internal static class ProgressWords
{
    private const int DaysOfYear = 365;
    private const int FewestPoints = 3;

    /// <summary>The entry with its words.</summary>
    /// <param name="entry">The figures.</param>
    /// <param name="thresholdW">Threshold power in force, W; null without one.</param>
    public static ProgressEntry Of(ProgressEntry entry, double? thresholdW) => entry with
    {
        EasyPower = new(EasyPower(entry), "Heat, sleep or a new sensor move it too."),
        Drift = new(Drift(entry), "Heat, drink and pace move it too."),
        Best = new(Best(entry), "A best is only as good as the effort behind it."),
        Threshold = new(Threshold(entry, thresholdW), "An old threshold bends every share in this review."),
    };

    private static string EasyPower(ProgressEntry entry)
    {
        if (Halves(entry.EasyPowerW) is not var (before, lately) || entry.EasyHeartRateBpm is not { } beats)
            return $"Power at one easy heart rate: {TooFew(entry.EasyPowerW.Length, "ride")}.";
        return $"At {Shown.HeartRate(beats)} easy rides gave {Shown.Watts(lately)} lately, {Shown.Watts(before)} before.";
    }

    private static string Drift(ProgressEntry entry) => Halves(entry.LongRideDriftPercent) is var (before, lately)
        ? $"On long rides heart rate drifted {Shown.Percent(lately, 1)} lately, {Shown.Percent(before, 1)} before."
        : $"Drift on long rides: {TooFew(entry.LongRideDriftPercent.Length, "ride")}.";

    private static string Best(ProgressEntry entry)
    {
        if (entry.Bests.Length < FewestPoints)
            return $"Bests by six weeks: {TooFew(entry.Bests.Length, "block")}.";
        var above = entry.Bests[^1].Bests.Where(best => best.MeanPowerW > best.BestBeforeW).Select(best => Shown.Window(best.Seconds)).ToArray();
        return above.Length == 0
            ? "No best of the last six weeks is above all before."
            : $"The last six weeks hold the best {Shown.List(above)} so far.";
    }

    private static string Threshold(ProgressEntry entry, double? thresholdW)
    {
        if (thresholdW is not { } watts)
            return "No threshold power is known.";
        if (entry.ThresholdEvidenceDays is not { } days)
            return $"Threshold power {Shown.Watts(watts)}, of unknown age: test it.";
        return $"Threshold power {Shown.Watts(watts)}, {Age(days)} old{(entry.TestThreshold ? ": test it again" : "")}.";
    }

    private static string TooFew(int points, string noun) =>
        points == 0 ? "nothing measured yet" : $"only {Shown.Count(points, noun)}, too few to say";

    // The older half against the newer; the middle one of an odd number belongs to the newer.
    private static (double Before, double Lately)? Halves(ImmutableArray<ProgressEntry.Figure> figures)
    {
        if (figures.Length < FewestPoints)
            return null;
        var half = figures.Length / 2;
        return (figures.Take(half).Average(figure => figure.Value), figures.Skip(half).Average(figure => figure.Value));
    }

    private static string Age(int days) => days < 2 * DaysOfYear ? Shown.Tally(days, "day") : Shown.Tally(days / DaysOfYear, "year");
}
