using RideAudit.Document.Layouts;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Fridge;

/// <summary>Who and when: the line at the top of each page.</summary>
internal sealed class FridgeHead : Block
{
    private const float Gap = 18;
    private static readonly TextStyle Strong = Styles.Strong with { Size = 10.5f };
    private static readonly TextStyle Quiet = Styles.Quiet with { Size = 10.5f };
    private readonly TextLine _who;
    private readonly TextLine _when;
    private readonly float _width;

    private FridgeHead(NextDocument document, string when, string details, FontSet fonts, float width)
    {
        _width = width;
        _when = TextLine.Of(fonts, [new Span(when, Strong), new Span(details, Quiet)]);
        var tier = document.Rider.Tier is { } known ? $"  {Formatting.Words.Of(known)} volume" : "";
        var room = width - _when.Width - Gap - Quiet.Measure(fonts, tier);
        _who = TextLine.Of(fonts, [new Span(TextLine.FitText(fonts, document.Rider.Label, Strong, room), Strong), new Span(tier, Quiet)]);
    }

    /// <inheritdoc/>
    public override float Height => _who.Leading + 6;

    /// <summary>The head of a week's page.</summary>
    public static FridgeHead Of(NextDocument document, NextWeekEntry week, FontSet fonts, float width) => new(
        document,
        $"Week of {Shown.FullDate(week.StartsOn)}",
        (week.IsoWeek is { } iso ? $", ISO week {Shown.Number(iso.Number)}" : "") + (ToComeWords.Apart(week) is { } apart ? $", {apart}" : ""),
        fonts,
        width);

    /// <summary>The head of a programme's page.</summary>
    public static FridgeHead Of(NextDocument document, FontSet fonts, float width) => new(document, Shown.Capital(ToComeWords.Span(document)), "", fonts, width);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        _who.Draw(surface, x, y + _who.Ascent);
        _when.Draw(surface, x + _width - _when.Width, y + _when.Ascent);
        surface.Hairline(x, x + _width, y + Height);
    }
}
