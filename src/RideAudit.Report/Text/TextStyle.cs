using RideAudit.Report.Fonts;
using SkiaSharp;

namespace RideAudit.Report.Text;

/// <summary>How a piece of text looks.</summary>
/// <param name="Weight">Weight.</param>
/// <param name="Size">Size, pt.</param>
/// <param name="Colour">Colour.</param>
/// <param name="Slanted">Slanted, for emphasis in a note.</param>
internal readonly record struct TextStyle(Weight Weight, float Size, SKColor Colour, bool Slanted = false)
{
    /// <summary>Distance between baselines, pt.</summary>
    public float Leading => MathF.Round(Size * 1.32f * 4) / 4;

    /// <summary>Height above the baseline that a line reserves, pt.</summary>
    public float Ascent => Size * 0.97f;
}
