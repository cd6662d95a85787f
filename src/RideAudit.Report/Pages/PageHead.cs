using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Pages;

/// <summary>Who and which week: the line at the top of page one.</summary>
internal sealed class PageHead : Block
{
    private const float Gap = 18;
    private readonly TextLine _rider;
    private readonly TextLine _week;
    private readonly float _width;
    private readonly bool _stacked;

    public PageHead(ReviewDocument review, FontSet fonts, float width)
    {
        _width = width;
        var strong = Styles.Strong with { Size = 10.5f };
        var quiet = Styles.Quiet with { Size = 10.5f };
        _week = TextLine.Of(fonts, [new Span($"Week of {Shown.FullDate(review.Week.StartsOn)}", strong), new Span(Details(review.Week), quiet)]);
        var tier = review.Rider.Tier is { } known ? $"  {Formatting.Words.Of(known)} volume" : "";
        var tierWidth = quiet.Measure(fonts, tier);
        _stacked = strong.Measure(fonts, review.Rider.Label) + tierWidth + Gap + _week.Width > width;
        var room = (_stacked ? width : width - _week.Width - Gap) - tierWidth;
        var label = TextLine.FitText(fonts, review.Rider.Label, strong, room);
        _rider = TextLine.Of(fonts, [new Span(label, strong), new Span(tier, quiet)]);
    }

    /// <inheritdoc/>
    public override float Height => (_stacked ? 2 : 1) * _rider.Leading + 6;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        _rider.Draw(surface, x, y + _rider.Ascent);
        if (_stacked)
            _week.Draw(surface, x, y + _rider.Leading + _week.Ascent);
        else
            _week.Draw(surface, x + _width - _week.Width, y + _week.Ascent);
        surface.Hairline(x, x + _width, y + Height);
    }

    private static string Details(WeekEntry week)
    {
        var text = "";
        if (week.IsoWeek is { Number: var number })
            text += $", ISO week {number}";
        if (week.PlanWeek is { } planWeek && week.PlanWeeks is { } planWeeks)
            text += $", week {planWeek} of {planWeeks}";
        if (week.Exception is { } exception)
            text += $", {Formatting.Words.Of(exception)}";
        return week.Finished ? text : text + ", not finished";
    }
}
