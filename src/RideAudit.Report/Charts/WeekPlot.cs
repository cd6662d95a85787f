using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Report.Words;
using ScottPlot;
using SkiaSharp;
using Palette = RideAudit.Report.Look.Palette;

namespace RideAudit.Report.Charts;

/// <summary>A plot with one place a week, the reviewed week last, drawn as vectors into a page.</summary>
internal sealed class WeekPlot : IDisposable
{
    private const int FewestPlaces = 12;
    private const float LeftRoom = 30;
    private const float BottomRoom = 13;
    private const float TopRoom = 5;
    private readonly ImmutableArray<HistoryEntry> history;
    private readonly double[] values;
    private readonly double[] weeks;
    private readonly int decimals;

    /// <param name="history">Weeks, oldest first.</param>
    /// <param name="low">Bottom of the value axis.</param>
    /// <param name="high">Top of the value axis.</param>
    /// <param name="step">Distance of its ticks.</param>
    public WeekPlot(ImmutableArray<HistoryEntry> history, double low, double high, double step)
    {
        InterResolver.Register();
        this.history = history;
        values = [.. Values(low, high, step)];
        weeks = [.. Weeks()];
        decimals = step < 1 || step != Math.Round(step) ? 1 : 0;
        Plot = new Plot();
        Plot.RenderManager.RenderActions.RemoveAll(action =>
            action is ScottPlot.Rendering.RenderActions.ClearCanvas or ScottPlot.Rendering.RenderActions.RenderBenchmark);
        Plot.FigureBackground.Color = Colors.Transparent;
        Plot.DataBackground.Color = Colors.Transparent;
        Plot.Layout.Fixed(new PixelPadding(LeftRoom, 0, BottomRoom, TopRoom));
        Plot.Axes.SetLimits(Math.Min(0, history.Length - FewestPlaces) - 0.65, history.Length - 0.35, low, high);
        Style();
    }

    /// <summary>The library's plot, for adding to.</summary>
    public Plot Plot { get; }

    /// <summary>Short dashes, for a level asked for.</summary>
    public static LinePattern Dashes => new([3, 2.5f], 0, "dashes");

    /// <summary>Dots, for what is still settling in.</summary>
    public static LinePattern Dots => new([1.2f, 2], 0, "dots");

    /// <summary>A colour of the palette for the chart library.</summary>
    public static Color Of(SKColor colour) => new(colour.Red, colour.Green, colour.Blue, colour.Alpha);

    /// <summary>Draws into an area of a page.</summary>
    public void Draw(Ink ink, SKRect area)
    {
        ink.Canvas.Save();
        ink.Canvas.ClipRect(new SKRect(area.Left, area.Top, area.Right, area.Bottom + 1));
        Plot.Render(ink.Canvas, new PixelRect(area.Left, area.Right, area.Bottom, area.Top));
        ink.Canvas.Restore();
        foreach (double value in values)
            ink.Text(Say.Number(value, decimals), Styles.Tiny, area.Left + LeftRoom - 6, At(0, value).Y + 2.7f, Align.End);
        foreach (double week in weeks)
            ink.Text(Say.Month(history[(int)week].StartsOn), Styles.Tiny, At(week, 0).X, area.Bottom - 3, Align.Middle);
    }

    /// <summary>Where a value of a week stands, after drawing.</summary>
    public SKPoint At(double week, double value)
    {
        Pixel pixel = Plot.GetPixel(new Coordinates(week, value));
        return new SKPoint(pixel.X, pixel.Y);
    }

    /// <summary>A value beside its mark, on a patch of paper so that no line runs through it.</summary>
    public static void Label(Ink ink, string text, float x, float baseline)
    {
        TextStyle style = Styles.Tiny with { Colour = Palette.Ink };
        float half = (Shaper.Measure(ink.Fonts, text, style) / 2) + 1;
        ink.Fill(new SKRect(x - half, baseline - style.Size + 1, x + half, baseline + 1), Palette.Paper);
        ink.Text(text, style, x, baseline, Align.Middle);
    }

    /// <summary>A bar of a week.</summary>
    public static Bar BarOf(int week, double from, double to, SKColor colour, double width = 0.62) => new()
    {
        Position = week,
        ValueBase = from,
        Value = to,
        Size = width,
        FillColor = Of(colour),
        LineWidth = 0,
    };

    /// <inheritdoc/>
    public void Dispose() => Plot.Dispose();

    private void Style()
    {
        Plot.Axes.Frame(false);
        Plot.Axes.Left.TickGenerator = Unlabelled(values);
        Plot.Axes.Bottom.TickGenerator = Unlabelled(weeks);
        foreach (IAxis axis in new IAxis[] { Plot.Axes.Left, Plot.Axes.Bottom })
        {
            axis.TickLabelStyle.FontName = InterResolver.Name;
            axis.MajorTickStyle.Length = 0;
            axis.MinorTickStyle.Length = 0;
        }

        Plot.Grid.XAxisStyle.IsVisible = false;
        Plot.Grid.MajorLineColor = Of(Palette.Hairline);
        Plot.Grid.MajorLineWidth = 0.5f;
    }

    private static IEnumerable<double> Values(double low, double high, double step)
    {
        for (double value = Math.Ceiling(low / step) * step; value <= high + (step / 1000); value += step)
            yield return value;
    }

    private IEnumerable<double> Weeks()
    {
        int every = Math.Max(1, (Math.Max(history.Length, FewestPlaces) + 12) / 13);
        for (int week = history.Length - 1; week >= 0; week -= every)
            yield return week;
    }

    // Labels are the pages' own text, so that every font of the document is cut down alike.
    private static ScottPlot.TickGenerators.NumericManual Unlabelled(double[] places) => new(places, [.. places.Select(_ => "")]);
}
