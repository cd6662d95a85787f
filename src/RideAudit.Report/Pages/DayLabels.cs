using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;

namespace RideAudit.Report.Pages;

/// <summary>The stress of each day over its blocks, drawn after everything that may run behind it.</summary>
/// <param name="style">The labels’ style.</param>
internal sealed class DayLabels(FontSet fonts, TextStyle style)
{
    private const float Beside = 1.5f;
    private readonly List<(string Text, float Centre, float Baseline, Area Area)> _labels = [];

    /// <summary>Where the labels stand.</summary>
    public IReadOnlyList<Area> Areas => [.. _labels.Select(label => label.Area)];

    /// <summary>Keeps a label for later.</summary>
    public void Add(string text, float centre, float baseline)
    {
        var half = (style.Measure(fonts, text) / 2) + Beside;
        _labels.Add((text, centre, baseline, new Area(centre - half, baseline - style.Size + 1, centre + half, baseline + 1)));
    }

    /// <summary>Draws them on patches of paper.</summary>
    public void Draw(Surface surface)
    {
        foreach ((var text, var centre, var baseline, var area) in _labels)
        {
            surface.Fill(area, Palette.Paper);
            surface.Text(text, style, centre, baseline, Align.Middle);
        }
    }
}
