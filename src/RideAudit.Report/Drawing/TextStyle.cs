using RideAudit.Report.Fonts;

namespace RideAudit.Report.Drawing;

/// <summary>How a piece of text looks.</summary>
/// <param name="Size">Size, pt.</param>
/// <param name="Slanted">Slanted, for emphasis in a note.</param>
internal readonly record struct TextStyle(Weight Weight, float Size, Colour Colour, bool Slanted = false)
{
    /// <summary>What a slanted letter leans to the right for each point of its height, pt.</summary>
    public const float Slant = 0.2f;

    /// <summary>Distance between baselines, pt.</summary>
    public float Leading => MathF.Round(Size * 1.32f * 4) / 4;

    /// <summary>Height above the baseline that a line reserves, pt.</summary>
    public float Ascent => Size * 0.97f;

    /// <summary>Width of a text in this style, pt.</summary>
    public float Measure(FontSet fonts, string text) => fonts.Measure(text, Weight, Size);
}
