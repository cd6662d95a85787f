using RideAudit.Document;
using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;

namespace RideAudit.Report.Look;

/// <summary>Fills for the three bands: light, hatched, dark.</summary>
internal static class Bands
{
    private const float HatchStep = 3.2f;
    private const float LegendAir = 4;
    private const float LegendGap = 10;

    /// <summary>A band's colour without its hatching, for what is too thin to carry any.</summary>
    public static void FillPlain(Surface surface, Area area, int band) => surface.Fill(area, Fills[band]);

    /// <summary>Names, lowest first.</summary>
    public static readonly string[] Names = ["low", "middle", "high"];

    private static readonly Colour[] Fills = [Palette.Low, Palette.Middle, Palette.High];

    /// <summary>Seconds of a band, 0 low to 2 high.</summary>
    public static double Seconds(BandEntry bands, int band) => band switch { 0 => bands.Low, 1 => bands.Middle, _ => bands.High };

    /// <summary>All banded seconds.</summary>
    public static double Total(BandEntry bands) => bands.Low + bands.Middle + bands.High;

    /// <summary>Fills an area as a band: 0 low, 1 middle, 2 high.</summary>
    public static void Fill(Surface surface, Area area, int band)
    {
        if (area.Width <= 0 || area.Height <= 0)
            return;
        surface.Fill(area, Fills[band]);
        // What is thinner than a step of the hatching would carry one stroke, or none: a speck, not a pattern.
        if (band == 1 && Math.Min(area.Width, area.Height) >= HatchStep)
            surface.Hatch(area, HatchStep, new Pen(Palette.Low, 0.5f));
    }

    /// <summary>Width of <see cref="Legend"/>, pt.</summary>
    public static float LegendWidth(FontSet fonts, TextStyle style) =>
        Names.Sum(name => Side(style) + LegendAir + style.Measure(fonts, name)) + (2 * LegendGap);

    /// <summary>A row of swatches with their names.</summary>
    public static void Legend(Surface surface, float x, float baseline, TextStyle style)
    {
        for (var band = 0; band < Names.Length; band++)
        {
            var side = Side(style);
            Fill(surface, new Area(x, baseline - side, x + side, baseline), band);
            x += side + LegendAir;
            x += surface.Text(Names[band], style, x, baseline) + LegendGap;
        }
    }

    private static float Side(TextStyle style) => style.Size * 0.8f;
}
