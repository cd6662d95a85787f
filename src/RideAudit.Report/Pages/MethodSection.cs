using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Pages;

/// <summary>The method in brief, its sources, and the cautions in full.</summary>
/// <param name="width">Width, pt.</param>
internal sealed class MethodSection(ReviewDocument review, FontSet fonts, float width)
{
    /// <summary>The section's blocks.</summary>
    public IEnumerable<Block> Blocks()
    {
        yield return new SectionHead(fonts, "The method in brief", width) { SpaceBefore = 24, KeepWithNext = true, Outline = "The method in brief" };
        foreach ((var term, var meaning) in Terms())
            yield return new TextBlock(fonts, [new Span(term + "  ", Styles.SmallStrong), new Span(meaning, Styles.SmallInk)], width) { SpaceBefore = 3 };
        yield return new TextBlock(fonts, "Cautions", Styles.Heading, width) { SpaceBefore = 12, KeepWithNext = true, Outline = "Cautions" };
        yield return new TextBlock(fonts, string.Join(' ', review.Summary.Cautions), Styles.Body, width) { SpaceBefore = 2, KeepWithNext = true };
        yield return new TextBlock(fonts, Origin(), Styles.Small, width) { SpaceBefore = 6 };
    }

    private string Origin() =>
        $"Reviewed as of {Shown.FullDate(review.AsOf)}, time zone {review.Rider.TimeZone}. Training of a rider described as {Formatting.Words.Of(review.Rider.Experience)}.";

    private IEnumerable<(string Term, string Meaning)> Terms()
    {
        var cuts = review.BandCutsPercent is [var low, var high, ..]
            ? $"High from {Shown.Percent(high)} of threshold power on, on the trailing 30{Shown.Joint}s mean; else middle from {Shown.Percent(low)} on, on the trailing 2{Shown.Joint}min mean; else low."
            : "";
        if (review.HeartRateCutsPercent is [var lower, var upper, ..])
            cuts += $" By heart rate: low under {Shown.Percent(lower)}, middle to under {Shown.Percent(upper)} of threshold heart rate.";
        yield return ("Threshold power (FTP)", "The power a rider can hold for about an hour, as the rider file gives it for the ride’s date; where an estimate stands in its place, the ride says so. Thresholds are estimates.");
        yield return ("Normalised power", "Fourth root of the mean fourth power of 30\u00A0s means, started anew after every pause. Allen and Coggan, Training and Racing with a Power Meter, from memory.");
        yield return ("Intensity ratio", "Normalised power over threshold power.");
        yield return ("Training stress", "Hours × intensity ratio squared ×\u00A0100: one hour at threshold is 100\u00A0points. Same source. Without power it comes from heart rate (Banister’s training impulse) or from the rider’s rating (Foster), and the ride says so.");
        yield return ("Bands", cuts.Trim() + " Common practice; shares of three zones after Seiler and Kjerland, 2006.");
        yield return ("Kinds", "High and threshold rides are told by sustained time near and above threshold, sprints and short repeats by bouts of at least 8\u00A0s at 120\u00A0% or more, long rides by length and ease; a day takes its hardest ride, and a hard day is a high or a threshold day. Common practice.");
        yield return ("Acute and chronic load", "Daily stress averaged with weights that fade over 7 and 42\u00A0days, from 0 on the day before the first ride; the first 42\u00A0days are settling in. Ramp is the week’s change in chronic load.");
        yield return ("Monotony and strain", "Mean over standard deviation of the seven daily stresses; stress × monotony. Foster, 1998, from memory.");
        yield return ("Verdicts", "Kept, watch, broken, or not judged with the reason. A rule says what it rests on: a published study, a handbook, or common practice. Where studies were of runners, the rule says so and is a caution only.");
    }
}
