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
        page.Line([new(Wrap.Pad(Shown.Start(ride.StartsAt), 22), Tone.Strong), new(ride.Kind == RideKind.None ? "no kind" : Words.Of(ride.Kind), Tone.Strong), $"  {Shown.Length(ride.DurationSeconds)}"]);
        page.Text(ride.File, Tone.Quiet, indent: 2);
        if (DataWords.Of(ride) is { } said)
            page.Text(said, indent: 2);
        page.Text(Sums(ride), indent: 2);
        var bands = ride.BandSeconds;
        if (bands.Low + bands.Middle + bands.High > 0)
            page.Text($"Low {Shown.Length(bands.Low)}, middle {Shown.Length(bands.Middle)}, high {Shown.Length(bands.High)}.", indent: 2);
        if (!ride.BestPowers.IsDefaultOrEmpty)
            page.Text("Best " + string.Join(", ", ride.BestPowers.Select(b => $"{Shown.Window(b.Seconds)} {Shown.Watts(b.MeanPowerW)}")) + ".", indent: 2);
        if (!ride.Stretches.IsDefaultOrEmpty)
            page.Text("Sustained " + string.Join("; ", ride.Stretches.GroupBy(s => s.SharePercent).Select(Stretches)) + ".", indent: 2);
        if (DataWords.Bouts(ride) is { } bouts)
            page.Text(bouts, indent: 2);
        foreach (var remark in ride.Remarks.IsDefault ? [] : ride.Remarks)
            page.Text(remark, Tone.Quiet, indent: 2);
    }

    private static string Sums(RideEntry ride)
    {
        var parts = new List<string>();
        if (ride.Stress is { } stress)
            parts.Add($"stress {Shown.Points(stress)} (from {Words.Of(ride.StressFrom)})");
        if (ride.NormalisedPowerW is { } power)
            parts.Add($"normalised power {Shown.Watts(power)}");
        if (ride.IntensityRatio is { } ratio)
            parts.Add($"intensity ratio {Shown.Number(ratio, 2)} of {Shown.Watts(ride.ThresholdPowerW)} ({Words.OrNull(ride.ThresholdFrom)})");
        if (ride.MeanHeartRateBpm is { } rate)
            parts.Add($"mean heart rate {Shown.HeartRate(rate)}");
        if (ride.HeartRateDriftPercent is { } drift)
            parts.Add($"heart-rate drift {Shown.Signed(drift)}{Shown.Joint}%");
        return parts.Count > 0 ? Shown.Sentence(string.Join(", ", parts)) : "No power and no threshold heart rate.";
    }

    private static string Stretches(IGrouping<double, StretchEntry> stretches)
    {
        var seconds = stretches.Sum(s => s.EndSecond - s.StartSecond);
        var longest = stretches.MaxBy(s => s.EndSecond - s.StartSecond)!;
        return $"at or above {Shown.Percent(stretches.Key)}: {Shown.Tally(stretches.Count(), "stretch", "stretches")}, {Shown.Length(seconds)} in all, "
            + $"the longest from {Shown.Clock(longest.StartSecond)} to {Shown.Clock(longest.EndSecond)} at {Shown.Watts(longest.MeanPowerW)}";
    }
}
