using RideAudit.Report.Charts;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Pages;

/// <summary>How to read the ride strips.</summary>
internal sealed class StripKey : Block
{
    private const float Gap = 14;
    private readonly List<TextLine> _lines;
    private readonly float _width;
    private readonly float _legendWidth;
    private readonly bool _hasPower;

    /// <param name="scale">The strips' scale.</param>
    /// <param name="width">Width, pt.</param>
    /// <param name="hasHeartRate">Heart rate runs under the power.</param>
    /// <param name="hasPauses">A ride has a pause.</param>
    public StripKey(StripScale scale, FontSet fonts, float width, bool hasHeartRate, bool hasPauses)
    {
        _width = width;
        _legendWidth = Bands.LegendWidth(fonts, Styles.Small);
        _hasPower = scale.TopW > 1;
        var heart = hasHeartRate ? _hasPower ? "Under the power: heart rate, bpm. " : "Heart rate, bpm. " : "";
        var text = $"{heart}{(_hasPower ? "Dotted: threshold. " : "")}{(hasPauses ? "Ticks: pauses. " : "")}One scale of {(_hasPower ? "watts and time" : "time")}.";
        _lines = LineBreaker.Break(fonts, [new Span(text, Styles.Small)], width - _legendWidth - Gap);
    }

    /// <inheritdoc/>
    public override float Height => _lines.Sum(line => line.Leading) + 2;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        if (_hasPower)
            Bands.Legend(surface, x + _width - _legendWidth, y + Styles.Small.Ascent, Styles.Small);
        foreach (var line in _lines)
        {
            line.Draw(surface, x, y + line.Ascent);
            y += line.Leading;
        }
    }
}
