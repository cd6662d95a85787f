using RideAudit.Document.Layouts;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Fridge;

/// <summary>One week of a programme: when, how much, what sets it apart, and its days as open blocks.</summary>
internal sealed class ProgrammeRow : Block
{
    private const float Left = 84;
    private const float LeastPicture = 57;
    private const float MostPicture = 92;
    private const float Air = 4.5f;
    private readonly NextWeekEntry _week;
    private readonly OpenWeek _days;
    private readonly List<TextLine> _text;
    private readonly float _width;

    /// <param name="week">The week.</param>
    /// <param name="scale">The scale that the weeks share.</param>
    /// <param name="fonts">Fonts.</param>
    /// <param name="width">Width, pt.</param>
    /// <param name="room">Height that it may take where there is more than it needs, pt.</param>
    public ProgrammeRow(NextWeekEntry week, WeekScale scale, FontSet fonts, float width, float room)
    {
        _week = week;
        _width = width;
        _days = new OpenWeek(week, scale, width - Left, Math.Clamp(room - (2 * Air), LeastPicture, MostPicture), isSmall: true);
        var apart = ToComeWords.Apart(week);
        var events = ToComeWords.Events(week);
        _text =
        [
            TextLine.Of(fonts, Shown.ShortDate(week.StartsOn), Styles.Strong),
            TextLine.Of(fonts, Shown.Hours(week.Hours), Styles.Body),
            TextLine.Of(fonts, Shown.Points(week.ExpectedStress), Styles.Small),
            .. apart is null ? [] : LineBreaker.Break(fonts, [new Span(apart, Styles.SmallStrong)], Left - 8),
            .. events is null ? [] : LineBreaker.Break(fonts, [new Span(events, Styles.Small)], Left - 8),
        ];
    }

    /// <summary>Named place at the row's week; the whole row leads there.</summary>
    public required string Target { get; init; }

    /// <inheritdoc/>
    public override float Height => Air + Math.Max(_days.Height, _text.Sum(l => l.Leading)) + Air;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Hairline(x, x + _width, y);
        surface.Link(new Area(x, y, x + Left, y + Height), Target);
        var top = y + Air;
        foreach (var line in _text)
        {
            line.Draw(surface, x, top + line.Ascent);
            top += line.Leading;
        }
        _days.Draw(surface, x + Left, y + Air);
    }
}
