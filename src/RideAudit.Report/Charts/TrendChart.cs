using RideAudit.Document;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Charts;

/// <summary>A chart of weeks with a title that says the finding and a sentence that says what is drawn.</summary>
internal sealed class TrendChart : Block
{
    private readonly ReviewDocument _review;
    private readonly TrendTopic _topic;
    private readonly float _width;
    private readonly float _depth;
    private readonly List<TextLine> _title;
    private readonly List<TextLine> _caption;

    public TrendChart(ReviewDocument review, TrendTopic topic, FontSet fonts, float width, float depth)
    {
        _review = review;
        _topic = topic;
        _width = width;
        _depth = depth;
        _title = LineBreaker.Break(fonts, [new Span(topic.Title, Styles.Strong)], width);
        _caption = LineBreaker.Break(fonts, [new Span(topic.Caption, Styles.Small)], width);
    }

    /// <inheritdoc/>
    public override Tag? Tag => Drawing.Tag.Figure;

    /// <inheritdoc/>
    public override string? Alternative => $"{_topic.Title}. {_topic.Caption}";

    /// <inheritdoc/>
    public override float Height => _title.Concat(_caption).Sum(line => line.Leading) + 3 + _depth;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        foreach (var line in _title.Concat(_caption))
        {
            line.Draw(surface, x, y + line.Ascent);
            y += line.Leading;
        }

        _topic.Draw(surface, _review, new Area(x, y + 3, x + _width, y + 3 + _depth));
    }
}
