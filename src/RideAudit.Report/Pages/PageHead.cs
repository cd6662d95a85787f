using RideAudit.Document;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Report.Words;

namespace RideAudit.Report.Pages;

/// <summary>Who and which week: the line at the top of page one.</summary>
internal sealed class PageHead : Block
{
    private const float Gap = 18;
    private readonly TextLine rider;
    private readonly TextLine week;
    private readonly float width;
    private readonly bool stacked;

    public PageHead(ReviewDocument review, FontSet fonts, float width)
    {
        this.width = width;
        TextStyle strong = Styles.Strong with { Size = 10.5f };
        TextStyle quiet = Styles.Quiet with { Size = 10.5f };
        week = TextLine.Of(fonts, [new Span($"Week of {Say.Date(review.Week.StartsOn)}", strong), new Span(Details(review.Week), quiet)]);
        string tier = review.Rider.Tier is { } known ? $"  {known} volume" : "";
        float tierWidth = quiet.Measure(fonts, tier);
        stacked = strong.Measure(fonts, review.Rider.Label) + tierWidth + Gap + week.Width > width;
        float room = (stacked ? width : width - week.Width - Gap) - tierWidth;
        string label = TextLine.FitText(fonts, review.Rider.Label, strong, room);
        rider = TextLine.Of(fonts, [new Span(label, strong), new Span(tier, quiet)]);
    }

    /// <inheritdoc/>
    public override float Height => (stacked ? 2 : 1) * rider.Leading + 6;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        rider.Draw(surface, x, y + rider.Ascent);
        if (stacked)
            week.Draw(surface, x, y + rider.Leading + week.Ascent);
        else
            week.Draw(surface, x + width - week.Width, y + week.Ascent);
        surface.Hairline(x, x + width, y + Height);
    }

    private static string Details(WeekEntry week)
    {
        string text = "";
        if (Say.IsoNumber(week.IsoWeek) is { } number)
            text += $", ISO week {number}";
        if (week.PlanWeek is { } planWeek && week.PlanWeeks is { } planWeeks)
            text += $", week {planWeek} of {planWeeks}";
        if (week.Exception is { } exception)
            text += $", {exception}";
        return week.Finished ? text : text + ", not finished";
    }
}
