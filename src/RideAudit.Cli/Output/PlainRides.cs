using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Units;

namespace RideAudit.Cli.Output;

/// <summary>The week's rides in plain text, with what each strip of the PDF shows.</summary>
internal static class PlainRides
{
    /// <summary>Writes a paragraph a ride.</summary>
    public static void Write(Page page, ReviewDocument document)
    {
        if (document.Rides.IsEmpty)
            return;
        PlainReview.Section(page, "Rides");
        foreach (var ride in document.Rides)
            Ride(page, ride);
    }

    private static void Ride(Page page, RideEntry ride)
    {
        page.Line([new(Wrap.Pad(Say.Start(ride.StartsAt), 22), Tone.Strong), new(ride.Kind == RideKind.None ? "no kind" : Words.Of(ride.Kind), Tone.Strong), $"  {Say.Duration(ride.DurationSeconds)}"]);
        page.Text(ride.File, Tone.Quiet, indent: 2);
        page.Text(Sums(ride), indent: 2);
        var bands = ride.BandSeconds;
        if (bands.Low + bands.Middle + bands.High > 0)
            page.Text($"Low {Say.Duration(bands.Low)}, middle {Say.Duration(bands.Middle)}, high {Say.Duration(bands.High)}.", indent: 2);
        if (!ride.BestPowers.IsDefaultOrEmpty)
            page.Text("Best " + string.Join(", ", ride.BestPowers.Select(b => $"{Say.Window(b.Seconds)} {Say.Number(b.MeanPowerW)} W")) + ".", indent: 2);
        if (!ride.Stretches.IsDefaultOrEmpty)
            page.Text("Sustained " + string.Join("; ", ride.Stretches.GroupBy(s => s.SharePercent).Select(Stretches)) + ".", indent: 2);
        foreach (var remark in ride.Remarks.IsDefault ? [] : ride.Remarks)
            page.Text(remark, Tone.Quiet, indent: 2);
    }

    private static string Sums(RideEntry ride)
    {
        var parts = new List<string>();
        if (ride.Stress is { } stress)
            parts.Add($"stress {Say.Number(stress, 1)} points (from {Words.Of(ride.StressFrom)})");
        if (ride.NormalisedPowerW is { } power)
            parts.Add($"normalised power {Say.Number(power)} W");
        if (ride.IntensityRatio is { } ratio)
            parts.Add($"intensity ratio {Say.Number(ratio, 2)} of {Say.Number(ride.ThresholdPowerW)} W ({Words.OrNull(ride.ThresholdFrom)})");
        if (ride.MeanHeartRateBpm is { } rate)
            parts.Add($"mean heart rate {Say.Number(rate)} bpm");
        if (ride.HeartRateDriftPercent is { } drift)
            parts.Add($"heart-rate drift {Say.Signed(drift, 1)} %");
        if (ride.Partial)
            parts.Add($"partial power ({Say.Percent(ride.PowerCoverage)} covered)");
        return parts.Count > 0 ? Say.Sentence(string.Join(", ", parts)) : "No power and no threshold heart rate.";
    }

    private static string Stretches(IGrouping<double, StretchEntry> stretches)
    {
        var seconds = stretches.Sum(s => s.EndSecond - s.StartSecond);
        var longest = stretches.MaxBy(s => s.EndSecond - s.StartSecond)!;
        return $"at or above {Say.Number(stretches.Key)} %: {Say.Count(stretches.Count(), "stretch", "stretches")}, {Say.Duration(seconds)} in all, "
            + $"the longest from {Say.Clock(longest.StartSecond)} to {Say.Clock(longest.EndSecond)} at {Say.Number(longest.MeanPowerW)} W";
    }
}
