using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Pages;

/// <summary>Threshold power in force beside what recent efforts say, the efforts named and linked where their ride is of the week.</summary>
/// <param name="width">Width, pt.</param>
internal sealed class ThresholdLines(ReviewDocument review, FontSet fonts, float width)
{
    /// <summary>A sentence, and a quiet line of values and efforts; nothing when no ride has power.</summary>
    public IEnumerable<Block> Blocks()
    {
        if (review.Thresholds is not { } thresholds)
            yield break;
        Span[] details = [.. Details(thresholds)];
        yield return new TextBlock(fonts, thresholds.Sentence, Styles.Body, width) { KeepWithNext = details.Length > 0 };
        if (details.Length > 0)
            yield return new TextBlock(fonts, details, width) { SpaceBefore = 2 };
    }

    private IEnumerable<Span> Details(ThresholdsEntry thresholds)
    {
        if (thresholds.InForce.Length > 1)
            yield return new Span($"In force: {string.Join(", ", thresholds.InForce.Select(Step))}. ", Styles.Small);
        if (thresholds.BestTwentyMinutes is { } best && !thresholds.CriticalPowerEfforts.Contains(best))
        {
            yield return new Span($"Best {Shown.Minutes(20)}: ", Styles.Small);
            foreach (var span in Effort(best, ". "))
                yield return span;
        }

        if (thresholds.CriticalPowerEfforts.IsEmpty)
            yield break;
        var work = thresholds.WorkAboveCriticalPowerKj is { } kilojoules ? $" with {Shown.Work(kilojoules, 1)} above it" : "";
        var power = thresholds.CriticalPowerW is { } watts ? $"Critical power {Shown.Watts(watts)}{work}, from: " : "Separate efforts: ";
        yield return new Span(power, Styles.Small);
        for (var i = 0; i < thresholds.CriticalPowerEfforts.Length; i++)
        {
            foreach (var span in Effort(thresholds.CriticalPowerEfforts[i], i == thresholds.CriticalPowerEfforts.Length - 1 ? "." : "; "))
                yield return span;
        }
    }

    private static string Step(ThresholdStepEntry step) => $"{Shown.Watts(step.PowerW)} from {Shown.FullDate(step.From)} ({Formatting.Words.Of(step.Source)})";

    private IEnumerable<Span> Effort(EffortEntry effort, string end)
    {
        int ride = review.Rides.ToList().FindIndex(ride => ride.File == effort.File);
        yield return new Span($"{Shown.Window(effort.Seconds)} {Shown.Watts(effort.MeanPowerW)} on {Shown.FullDate(effort.Date)}: ", Styles.Small);
        yield return ride < 0
            ? new Span(effort.File + end, Styles.Small)
            : new Span(effort.File + end, Styles.Small with { Colour = Palette.High }, Places.Ride(ride));
    }
}
