using RideAudit.Document;
using RideAudit.Report.Fonts;
using RideAudit.Report.Text;
using SkiaSharp;

namespace RideAudit.Report.Look;

/// <summary>Fills for the three bands: light, hatched, dark.</summary>
internal static class Bands
{
    private const float HatchStep = 3.2f;
    private const float LegendAir = 4;
    private const float LegendGap = 10;

    /// <summary>Names, lowest first.</summary>
    public static readonly string[] Names = ["low", "middle", "high"];

    private static readonly SKColor[] Fills = [Palette.Low, Palette.Middle, Palette.High];

    /// <summary>Seconds of a band, 0 low to 2 high.</summary>
    public static double Seconds(BandEntry bands, int band) => band switch { 0 => bands.Low, 1 => bands.Middle, _ => bands.High };

    /// <summary>All banded seconds.</summary>
    public static double Total(BandEntry bands) => bands.Low + bands.Middle + bands.High;

    /// <summary>Fills an area as a band: 0 low, 1 middle, 2 high.</summary>
    public static void Fill(Ink ink, SKRect area, int band)
    {
        if (area.Width <= 0 || area.Height <= 0)
            return;
        ink.Fill(area, Fills[band]);
        if (band == 1)
            Hatch(ink, area);
    }

    /// <summary>Width of <see cref="Legend"/>, pt.</summary>
    public static float LegendWidth(FontSet fonts, TextStyle style) =>
        Names.Sum(name => Side(style) + LegendAir + Shaper.Measure(fonts, name, style)) + (2 * LegendGap);

    /// <summary>A row of swatches with their names.</summary>
    public static void Legend(Ink ink, float x, float baseline, TextStyle style)
    {
        for (int band = 0; band < Names.Length; band++)
        {
            float side = Side(style);
            Fill(ink, new SKRect(x, baseline - side, x + side, baseline), band);
            x += side + LegendAir;
            x += ink.Text(Names[band], style, x, baseline) + LegendGap;
        }
    }

    private static float Side(TextStyle style) => style.Size * 0.8f;

    private static void Hatch(Ink ink, SKRect area)
    {
        ink.Canvas.Save();
        ink.Canvas.ClipRect(area);
        for (float x = area.Left - area.Height + HatchStep; x < area.Right; x += HatchStep)
            ink.Line(x, area.Bottom, x + area.Height, area.Top, Palette.Low, 0.5f);
        ink.Canvas.Restore();
    }
}
