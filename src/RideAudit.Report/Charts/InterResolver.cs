using RideAudit.Report.Fonts;
using ScottPlot;
using SkiaSharp;

namespace RideAudit.Report.Charts;

/// <summary>Gives the chart library the pages' own fonts, whatever name it asks for, so that it never looks for one on the machine.</summary>
internal sealed class InterResolver : IFontResolver
{
    /// <summary>The name charts ask for.</summary>
    public const string Name = "Inter";

    private static readonly Lazy<bool> Registration = new(() =>
    {
        ScottPlot.Fonts.FontResolvers.Insert(0, new InterResolver());
        ScottPlot.Fonts.Default = Name;
        return true;
    });

    /// <summary>Makes the library ask here first.</summary>
    public static void Register() => _ = Registration.Value;

    /// <inheritdoc/>
    public SKTypeface? CreateTypeface(string fontName, FontWeight weight, FontSlant slant, FontSpacing spacing) =>
        FontSet.OfThisMachine.Inter(weight >= FontWeight.SemiBold ? Weight.SemiBold : Weight.Regular).NewTypeface();

    /// <inheritdoc/>
    public SKTypeface? CreateTypeface(string fontName, bool bold, bool italic) =>
        FontSet.OfThisMachine.Inter(bold ? Weight.SemiBold : Weight.Regular).NewTypeface();
}
