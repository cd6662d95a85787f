using RideAudit.Report.Drawing;
using RideAudit.Report.Look;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace RideAudit.Report.Tests.Look;

/// <summary>Contrast after WCAG 2.1, success criterion 1.4.3 (relative luminance as it defines it).</summary>
public sealed class PaletteTests
{
    private const double LeastContrast = 4.5;

    [Fact]
    public void The_contrast_formula_gives_21_for_black_on_white() => Assert.Equal(21, Contrast(new Colour(0, 0, 0), Palette.Paper), 6);

    [Fact]
    public void Every_text_colour_is_at_least_4_5_to_1_on_paper() =>
        Assert.All(Palette.TextColours, colour => Assert.True(Contrast(colour, Palette.Paper) >= LeastContrast, $"{colour} is {Contrast(colour, Palette.Paper):F2}:1"));

    [Theory]
    [InlineData("middle")]
    [InlineData("heart-rate-only")]
    [InlineData("noted")]
    public void Text_is_set_in_no_other_colour(string name)
    {
        string[] allowed = [.. Palette.TextColours.Select(colour => $"{colour.Red} {colour.Green} {colour.Blue}").Order()];
        using PdfDocument document = Drawn.Open(name, Paper.A4);

        Assert.All(document.GetPages().SelectMany(page => page.Letters).Select(ColourOf).Distinct(), colour => Assert.Contains(colour, allowed));
    }

    [Fact]
    public void The_bands_go_from_light_to_dark()
    {
        double[] lightness = [Luminance(Palette.Low), Luminance(Palette.Middle), Luminance(Palette.High)];

        Assert.True(lightness[0] > 2 * lightness[1] && lightness[1] > 2 * lightness[2]);
    }

    private static string ColourOf(Letter letter)
    {
        (double red, double green, double blue) = letter.Color!.ToRGBValues();
        return $"{Math.Round(red * 255)} {Math.Round(green * 255)} {Math.Round(blue * 255)}";
    }

    private static double Contrast(Colour one, Colour other)
    {
        double light = Math.Max(Luminance(one), Luminance(other)), dark = Math.Min(Luminance(one), Luminance(other));
        return (light + 0.05) / (dark + 0.05);
    }

    private static double Luminance(Colour colour) => (0.2126 * Linear(colour.Red)) + (0.7152 * Linear(colour.Green)) + (0.0722 * Linear(colour.Blue));

    private static double Linear(byte channel)
    {
        double share = channel / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}
