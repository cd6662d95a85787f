using RideAudit.Formatting;
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
    public StripKey(StripScale scale, FontSet fonts, float width, bool hasHeartRate)
    {
        _width = width;
        _legendWidth = Bands.LegendWidth(fonts, Styles.Small);
        _hasPower = scale.TopW > 1;
        var text = _hasPower
            ? $"{(hasHeartRate ? "Under the power: heart rate, bpm. " : "")}Dotted: threshold; ticks: pauses. All {Shown.Watts(scale.TopW)} high, {Shown.Length(scale.Seconds)} wide."
            : $"Heart rate, bpm. Ticks: pauses. All {Shown.Length(scale.Seconds)} wide.";
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
