using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Report.Charts;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Units;

namespace RideAudit.Report.Pages;

/// <summary>One ride: its trace over the bands, heart rate beneath, best efforts and remarks.</summary>
internal sealed class RideStrip : Block
{
    private const float Air = 6;
    private const float PowerDepth = 84;
    private const float HeartDepth = 42;
    private const float AxisDepth = 15;
    private readonly RideEntry ride;
    private readonly int index;
    private readonly float width;
    private readonly float traceDepth;
    private readonly TextLine title;
    private readonly TextLine file;
    private readonly List<TextLine> facts;
    private readonly TraceChart? chart;

    public RideStrip(RideEntry ride, RideTrace? trace, int index, ImmutableArray<double> cuts, FontSet fonts, float width)
    {
        this.ride = ride;
        this.index = index;
        this.width = width;
        title = TextLine.Of(fonts, [new Span(Title(ride), Styles.Strong), new Span(Measures(ride), Styles.Body)]);
        file = TextLine.Fit(fonts, ride.File, Styles.Small, Math.Max(60, width - title.Width - 14));
        facts = LineBreaker.Break(fonts, Facts(ride), width);
        traceDepth = trace is { Power30W.IsEmpty: true } ? HeartDepth : PowerDepth;
        chart = trace is not null && TraceChart.HasSomething(trace) ? new TraceChart(ride, trace, cuts, width, traceDepth) : null;
    }

    /// <inheritdoc/>
    public override float Height => Air + title.Leading + 2 + (chart is null ? 0 : traceDepth + AxisDepth) + facts.Sum(line => line.Leading);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Anchor(x, y, Places.Ride(index));
        surface.Hairline(x, x + width, y);
        y += Air;
        title.Draw(surface, x, y + title.Ascent);
        file.Draw(surface, x + width - file.Width, y + title.Ascent);
        y += title.Leading + 2;
        if (chart is not null)
        {
            chart.Draw(surface, x, y);
            y += traceDepth + AxisDepth;
        }

        foreach (TextLine line in facts)
        {
            line.Draw(surface, x, y + line.Ascent);
            y += line.Leading;
        }
    }

    private static string Title(RideEntry ride) =>
        $"{Shown.DayAndDate(ride.StartsAt.Date)} {Shown.Time(ride.StartsAt.TimeOfDay)}, {(ride.Kind == RideKind.None ? "short ride" : Formatting.Words.Of(ride.Kind))}";

    private static string Measures(RideEntry ride)
    {
        string text = $"  {Shown.Length(ride.DurationSeconds)}";
        if (ride.DistanceKm is { } distance)
            text += $" · {Shown.Distance(distance)}";
        if (ride.Stress is { } stress)
            text += $" · {Shown.Points(stress)}" + (ride.StressFrom is StressSource.Power or StressSource.Unknown ? "" : $" from {Formatting.Words.Of(ride.StressFrom)}");
        return text;
    }

    private static IEnumerable<Span> Facts(RideEntry ride)
    {
        var parts = new List<string>();
        if (ride.NormalisedPowerW is { } normalised)
            parts.Add($"Normalised power {Shown.Watts(normalised)}, mean {Shown.Watts(ride.MeanPowerW)}, threshold {Shown.Watts(ride.ThresholdPowerW)} ({Formatting.Words.OrNull(ride.ThresholdFrom)}).");
        if (!ride.BestPowers.IsEmpty)
            parts.Add("Best: " + string.Join(", ", ride.BestPowers.Select(best => $"{Shown.Window(best.Seconds)} {Shown.Watts(best.MeanPowerW)}")) + ".");
        if (!ride.Stretches.IsEmpty)
            parts.Add(Sustained(ride.Stretches));
        if (ride.MeanHeartRateBpm is { } heart)
            parts.Add($"Mean heart rate {Shown.HeartRate(heart)}.");
        if (ride.Partial)
            parts.Add($"Partial: power covers {Shown.Share(ride.PowerCoverage)} of the ride.");
        if (ride.Rating is { } rating)
            parts.Add($"Rated {Shown.Number(rating, rating == Math.Round(rating) ? 0 : 1)} of 10.");
        if (!ride.Parts.IsEmpty)
            parts.Add($"Joined from {string.Join(", ", ride.Parts)}.");
        parts.AddRange(ride.Remarks);
        yield return new Span(string.Join(' ', parts), Styles.Small);
    }

    private static string Sustained(ImmutableArray<StretchEntry> stretches) => string.Join(' ', stretches
        .GroupBy(stretch => stretch.SharePercent).OrderByDescending(group => group.Key)
        .Select(group => $"At or above {Shown.Number(group.Key)}\u00A0%: {string.Join(", ", group.Select(Stretch))}."));

    private static string Stretch(StretchEntry stretch) =>
        $"{Shown.Length(stretch.EndSecond - stretch.StartSecond)} from {Shown.Length(stretch.StartSecond)} ({Shown.Watts(stretch.MeanPowerW)})";
}
