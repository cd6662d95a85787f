using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Report.Charts;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Report.Words;

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

    public RideStrip(RideEntry ride, int index, ImmutableArray<double> cuts, FontSet fonts, float width)
    {
        this.ride = ride;
        this.index = index;
        this.width = width;
        title = TextLine.Of(fonts, [new Span(Title(ride), Styles.Strong), new Span(Measures(ride), Styles.Body)]);
        file = TextLine.Fit(fonts, ride.File, Styles.Small, Math.Max(60, width - title.Width - 14));
        facts = LineBreaker.Break(fonts, Facts(ride), width);
        traceDepth = ride.Trace is { Power30W.IsEmpty: true } ? HeartDepth : PowerDepth;
        chart = ride.Trace is { } trace && TraceChart.HasSomething(trace) ? new TraceChart(ride, trace, cuts, width, traceDepth) : null;
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
        $"{Say.Day(ride.StartsAt.Date)} {Say.Time(ride.StartsAt.TimeOfDay)}, {ride.Kind ?? "short ride"}";

    private static string Measures(RideEntry ride)
    {
        string text = $"  {Say.Length(ride.DurationSeconds)}";
        if (ride.DistanceKm is { } distance)
            text += $" · {Say.Unit(distance, 1, "km")}";
        if (ride.Stress is { } stress)
            text += $" · {Say.Unit(stress, 0, "points")}" + (ride.StressFrom is "power" or null ? "" : $" from {ride.StressFrom}");
        return text;
    }

    private static IEnumerable<Span> Facts(RideEntry ride)
    {
        var parts = new List<string>();
        if (ride.NormalisedPowerW is { } normalised)
            parts.Add($"Normalised power {Say.Unit(normalised, 0, "W")}, mean {Say.Number(ride.MeanPowerW)} W, threshold {Say.Number(ride.ThresholdPowerW)} W ({ride.ThresholdFrom}).");
        if (!ride.BestPowers.IsEmpty)
            parts.Add("Best: " + string.Join(", ", ride.BestPowers.Select(best => $"{Say.Window(best.Seconds)} {Say.Unit(best.MeanPowerW, 0, "W")}")) + ".");
        if (!ride.Stretches.IsEmpty)
            parts.Add(Sustained(ride.Stretches));
        if (ride.MeanHeartRateBpm is { } heart)
            parts.Add($"Mean heart rate {Say.Unit(heart, 0, "bpm")}.");
        if (ride.Partial)
            parts.Add($"Partial: power covers {Say.Percent(ride.PowerCoverage)} of the ride.");
        if (ride.Rating is { } rating)
            parts.Add($"Rated {Say.Number(rating, rating == Math.Round(rating) ? 0 : 1)} of 10.");
        if (!ride.Parts.IsEmpty)
            parts.Add($"Joined from {string.Join(", ", ride.Parts)}.");
        parts.AddRange(ride.Remarks);
        yield return new Span(string.Join(' ', parts), Styles.Small);
    }

    private static string Sustained(ImmutableArray<StretchEntry> stretches) => string.Join(' ', stretches
        .GroupBy(stretch => stretch.SharePercent).OrderByDescending(group => group.Key)
        .Select(group => $"At or above {Say.Number(group.Key)}\u00A0%: {string.Join(", ", group.Select(Stretch))}."));

    private static string Stretch(StretchEntry stretch) =>
        $"{Say.Length(stretch.EndSecond - stretch.StartSecond)} from {Say.Length(stretch.StartSecond)} ({Say.Unit(stretch.MeanPowerW, 0, "W")})";
}
