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
    private readonly ReviewDocument review;
    private readonly TrendTopic topic;
    private readonly float width;
    private readonly float depth;
    private readonly List<TextLine> title;
    private readonly List<TextLine> caption;

    public TrendChart(ReviewDocument review, TrendTopic topic, FontSet fonts, float width, float depth)
    {
        this.review = review;
        this.topic = topic;
        this.width = width;
        this.depth = depth;
        title = LineBreaker.Break(fonts, [new Span(topic.Title, Styles.Strong)], width);
        caption = LineBreaker.Break(fonts, [new Span(topic.Caption, Styles.Small)], width);
    }

    /// <inheritdoc/>
    public override float Height => title.Concat(caption).Sum(line => line.Leading) + 3 + depth;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        foreach (TextLine line in title.Concat(caption))
        {
            line.Draw(surface, x, y + line.Ascent);
            y += line.Leading;
        }

        topic.Draw(surface, review, new Area(x, y + 3, x + width, y + 3 + depth));
    }
}
