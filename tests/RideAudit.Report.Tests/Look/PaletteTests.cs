using RideAudit.Report.Drawing;
using RideAudit.Report.Look;
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
        using var document = Drawn.Open(name, Paper.A4);

        Assert.All(document.GetPages().SelectMany(page => page.Letters).Select(ColourOf).Distinct(), colour => Assert.Contains(colour, allowed));
    }

    [Fact]
    public void The_bands_go_from_light_to_dark()
    {
        double[] lightness = [Luminance(Palette.Low), Luminance(Palette.Middle), Luminance(Palette.High)];

        Assert.True(lightness[0] > 2 * lightness[1] && lightness[1] > 2 * lightness[2]);
    }

    // Severity 1.0 matrices of Machado, Oliveira and Fernandes 2009, IEEE Trans Vis Comput Graph 15:1291 (from memory), on linear light.
    public static TheoryData<string, double[]> Sights => new()
    {
        { "grey", [0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722] },
        { "no red", [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998] },
        { "no green", [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.01182, 0.04294, 0.968881] },
        { "no blue", [1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.3039] },
    };

    [Theory]
    [MemberData(nameof(Sights))]
    public void Neighbouring_bands_are_1_5_to_1_apart_in_grey_and_without_a_colour(string sight, double[] matrix)
    {
        double Seen(Colour colour)
        {
            double[] light = [Linear(colour.Red), Linear(colour.Green), Linear(colour.Blue)];
            double Row(int row) => Math.Clamp((matrix[3 * row] * light[0]) + (matrix[(3 * row) + 1] * light[1]) + (matrix[(3 * row) + 2] * light[2]), 0, 1);
            return (0.2126 * Row(0)) + (0.7152 * Row(1)) + (0.0722 * Row(2));
        }

        double[] bands = [Seen(Palette.Paper), Seen(Palette.Low), Seen(Palette.Middle), Seen(Palette.High)];

        for (var band = 1; band < bands.Length; band++)
            Assert.True((bands[band - 1] + 0.05) / (bands[band] + 0.05) >= 1.5, $"{sight}: band {band} is {(bands[band - 1] + 0.05) / (bands[band] + 0.05):F2}:1");
    }

    private static string ColourOf(Letter letter)
    {
        (var red, var green, var blue) = letter.Color!.ToRGBValues();
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
        var share = channel / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}
