using System.Globalization;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Charts;
using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Pages;

namespace RideAudit.Report.Tests.Charts;

/// <summary>What is printed at a chart's axes and marks is the document's figure, and what is drawn stands where the axis says so.</summary>
public sealed class AxisLabelTests
{
    private const double Hair = 0.02;
    private static readonly Area Plot = new(0, 0, 300, 84);

    public static TheoryData<string> Reviews => [.. RealReviews.Names];

    [Theory]
    [MemberData(nameof(Reviews))]
    public void Hours_by_band_read_off_the_axis_are_the_documents(string name)
    {
        var review = RealReviews.Of(name);
        var page = Drawn(surface => new HoursTopic("", "").Draw(surface, review, Plot));
        var axis = Axis(page);
        for (var week = 0; week < review.History.Length; week++)
        {
            var at = new WeekPlot(page, Plot, review.History, Scale.For(review.History.SelectMany(w => new[] { w.Hours, (w.PlannedHours ?? 0) * 1.1 }), 4)).At(week, 0).X;
            var bar = page.Shapes.Where(shape => shape.Colour != Palette.Paper && shape.Left < at && shape.Right > at).ToArray();
            if (bar.Length > 0)
                Assert.Equal(Bands.Total(review.History[week].BandSeconds) / 3600, axis(bar.Min(shape => shape.Top)), Hair);
        }

        Assert.Contains(page.Texts, text => text.Text.EndsWith(Shown.Number(review.Week.Hours, 1), StringComparison.Ordinal) && text.Left > 26);
        AssertWeeks(page, review);
    }

    [Theory]
    [MemberData(nameof(Reviews))]
    public void Chronic_load_read_off_the_axis_is_the_documents(string name)
    {
        var review = RealReviews.Of(name);
        var page = Drawn(surface => new LoadTopic("", "").Draw(surface, review, Plot));
        var mark = Assert.Single(page.Shapes, shape => shape.Colour == Palette.Ink);

        Assert.Equal(review.Week.ChronicLoad, Axis(page)((mark.Top + mark.Bottom) / 2), 0.1);
        Assert.Contains(page.Texts, text => text.Text == Shown.Number(review.Week.ChronicLoad, 1));
        AssertWeeks(page, review);
    }

    [Theory]
    [MemberData(nameof(Reviews))]
    public void The_small_series_print_their_first_and_last_figures(string name)
    {
        var progress = RealReviews.Of(name).Progress!;
        foreach (var (figures, unit, decimals) in new[] { (progress.EasyPowerW, "W", 0), (progress.LongRideDriftPercent, "%", 1) })
        {
            if (figures.Length < 2)
                continue;
            var page = Drawn(surface => new SmallPlot(unit, decimals, [new("", [.. figures.Select(figure => (figure.Date, figure.Value))])]).Draw(surface, new Area(0, 0, 110, 47)));
            string[] said = [.. page.Texts.Select(text => text.Text)];
            Assert.Contains(Shown.Quantity(figures[^1].Value, unit, decimals), said);
            Assert.Contains(Shown.ShortDate(figures[0].Date), said);
            Assert.Contains(Shown.ShortDate(figures[^1].Date), said);
            if (figures[0].Value != figures[^1].Value)
                Assert.Contains(Shown.Quantity(figures[0].Value, unit, decimals), said);
        }
    }

    [Theory]
    [MemberData(nameof(Reviews))]
    public void A_ride_strips_axes_say_its_threshold_its_heart_rates_and_its_length(string name)
    {
        var (review, traces) = RealReviews.WithTraces(name);
        var scale = StripScale.Of(review, traces);
        foreach (var ride in review.Rides)
        {
            if (traces.Of(ride.File) is not { } trace || !TraceChart.HasSomething(trace))
                continue;
            var page = Drawn(surface => new TraceChart(ride, trace, review.BandCutsPercent, scale, 400, 62, null).Draw(surface, 0, 0));
            string[] left = [.. page.Texts.Where(text => text.Right < 36).Select(text => text.Text)];
            if (!trace.Power30W.IsEmpty && ride.ThresholdPowerW is { } threshold)
                Assert.Contains(Shown.Watts(threshold), left);
            float[] beats = [.. trace.HeartRateBpm.Where(float.IsFinite)];
            if (beats.Length > 0)
            {
                double[] ends = [.. left.SelectMany(text => text.Split('–')).Select(Number).OfType<double>()];
                Assert.InRange(beats.Min(), ends.Min(), ends.Min() + 11);
                Assert.InRange(beats.Max(), ends.Max() - 20, ends.Max());
            }

            AssertTimes(ride, scale, page);
        }
    }

    [Theory]
    [MemberData(nameof(Reviews))]
    public void The_tolerance_stands_across_the_bars_at_the_intended_share(string name)
    {
        var review = RealReviews.Of(name);
        if (review.Week is not { SplitByTime: { } split, IntendedLowShare: { } intended })
            return;
        var page = Drawn(surface => new SplitBar(review, FontSet.OfThisMachine, 480).Draw(surface, 0, 0));
        var bars = page.Shapes.Where(shape => shape.Bottom - shape.Top is > 12 and < 14).ToArray();
        float left = bars.Min(bar => bar.Left), right = bars.Max(bar => bar.Right);
        var middle = Assert.Single(page.Strokes, stroke => stroke.Pen.Width is > 1.5f and < 1.7f);

        Assert.Equal(intended, (middle.Middle - left) / (right - left), 0.002);
        Assert.Equal(split.Low, (bars.Where(bar => bar.Left == left).MinBy(bar => bar.Top).Right - left) / (right - left), 0.002);
        Assert.All(page.Texts.Where(text => text.Text.Contains('%', StringComparison.Ordinal) && text.Baseline > 20), text => Assert.True(text.Left > right, $"{text.Text} stands over its bar."));
    }

    private static PageRecord Drawn(Action<Surface> draw)
    {
        var page = new PageRecord(FontSet.OfThisMachine);
        draw(page);
        return page;
    }

    // Every tick's label is the time that its place on the strip means.
    private static void AssertTimes(RideEntry ride, StripScale scale, PageRecord page)
    {
        float[] ticks = [.. page.Strokes.Where(stroke => stroke.Left == stroke.Right && stroke.Bottom - stroke.Top is > 2.4f and < 2.6f).Select(stroke => stroke.Left).Order()];
        string[] said = [.. page.Texts.Where(text => text.Baseline > 64).OrderBy(text => text.Left).Select(text => text.Text)];
        Assert.Equal(ticks.Length, said.Length);
        Assert.Equal("0", said[0]);
        var perPoint = scale.Seconds / (400 - ticks[0]);
        for (var tick = 1; tick < ticks.Length; tick++)
        {
            var second = (ticks[tick] - ticks[0]) * perPoint;
            Assert.Equal(Shown.Length(Math.Round(second / 60) * 60), said[tick]);
            Assert.True(second <= ride.DurationSeconds + 1);
        }
    }

    /// <summary>What a height on the page means by the labels of the value axis.</summary>
    private static Func<double, double> Axis(PageRecord page)
    {
        var ticks = page.Texts.Where(text => text.Right < 26 && Number(text.Text) is not null).Select(text => (Value: Number(text.Text)!.Value, Y: text.Baseline - 2.7)).OrderBy(tick => tick.Value).ToArray();
        Assert.True(ticks.Length >= 2);
        var perPoint = (ticks[^1].Value - ticks[0].Value) / (ticks[0].Y - ticks[^1].Y);
        Assert.All(ticks, tick => Assert.Equal(tick.Value, ticks[0].Value + ((ticks[0].Y - tick.Y) * perPoint), 0.05));
        return y => ticks[0].Value + ((ticks[0].Y - y) * perPoint);
    }

    private static void AssertWeeks(PageRecord page, ReviewDocument review)
    {
        string[] starts = [.. review.History.Select(week => Shown.ShortDate(week.StartsOn))];
        string[] printed = [.. page.Texts.Where(text => text.Baseline > Plot.Bottom - 6).Select(text => text.Text)];
        Assert.NotEmpty(printed);
        Assert.All(printed, date => Assert.Contains(date, starts));
        Assert.Contains(starts[^1], printed);
    }

    private static double? Number(string text) => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : null;
}
