using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Report.Words;

namespace RideAudit.Report.Pages;

/// <summary>A review set on pages, ready to draw in any order.</summary>
internal sealed class ReviewPages : IPages
{
    private const float ShortFlow = 660;
    private static readonly float[] StripDepths = [92, 76, 62, 50, 41, 37, 33];
    private readonly ReviewDocument _review;
    private readonly ReviewTraces _traces;
    private readonly FontSet _fonts;
    private readonly bool _appendix;
    private readonly PageOne _first;
    private readonly IReadOnlyList<IReadOnlyList<Placed>> _flow;

    public ReviewPages(ReviewDocument review, PageOptions options, FontSet fonts, ReviewTraces? traces = null)
    {
        _traces = traces ?? ReviewTraces.None;
        _review = review;
        _fonts = fonts;
        Sheet = new Sheet(options.Paper);
        _appendix = options.Appendix;
        _first = new PageOne(review, options, fonts, Sheet);
        _flow = Flow();
    }

    /// <inheritdoc/>
    public Sheet Sheet { get; }

    /// <inheritdoc/>
    public int Count => 1 + _flow.Count;

    /// <inheritdoc/>
    public IEnumerable<OutlineLine> Outline
    {
        get
        {
            yield return new OutlineLine("The week", Places.Outline(0, 0));
            for (var page = 0; page < _flow.Count; page++)
            {
                for (var i = 0; i < _flow[page].Count; i++)
                {
                    if (_flow[page][i].Block.Outline is { } title)
                        yield return new OutlineLine(title, Places.Outline(page + 1, i));
                }
            }
        }
    }

    /// <inheritdoc/>
    public void Draw(int page, Surface surface)
    {
        if (page == 0)
        {
            surface.Anchor(Sheet.Left, Sheet.Top, Places.Outline(0, 0));
            _first.Draw(surface, Count);
            return;
        }

        surface.Tagged(Tag.Artifact, null, () => DrawFurniture(page, surface));
        for (var i = 0; i < _flow[page - 1].Count; i++)
        {
            (var block, var y) = _flow[page - 1][i];
            if (block.Outline is not null)
                surface.Anchor(Sheet.Left, y, Places.Outline(page, i));
            block.DrawTagged(surface, Sheet.Left, y);
        }
    }

    // As few pages as the closest setting takes, and on them the roomiest: strips as deep as they can be, the season beside the rides where it has room.
    private IReadOnlyList<IReadOnlyList<Placed>> Flow()
    {
        var marks = new SourceMarks(_review);
        var width = Sheet.ContentWidth;
        var parts = new Parts(
            [.. new RulesSection(_review, marks, _fonts, width).Blocks(), .. new PlannedSection(_review, _fonts, width).Blocks(), .. new TrendSection(_review, _fonts, Sheet).Blocks()],
            [.. new ImprovementSection(_review, _fonts, width).Blocks()],
            [.. new SourcesSection(_review, marks, _fonts, width, _appendix).Blocks()]);
        if (_review.Rides.IsEmpty)
            return Flow(parts, StripDepths[0], early: true);
        var fewest = Math.Min(Flow(parts, StripDepths[^1], early: true).Count, Flow(parts, StripDepths[^1], early: false).Count);
        return StripDepths.SelectMany(depth => new[] { false, true }.Select(early => (depth, early))).Select(setting => Flow(parts, setting.depth, setting.early)).First(pages => pages.Count <= fewest);
    }

    /// <param name="strip">Depth of a ride strip, pt.</param>
    /// <param name="early">The season stands on page two where it has room there.</param>
    private IReadOnlyList<IReadOnlyList<Placed>> Flow(Parts parts, float strip, bool early)
    {
        var width = Sheet.ContentWidth;
        var pages = new PageFlow(Sheet);
        AddNote(pages);
        if (_review.Rides.IsEmpty && !_appendix)
            return pages.Finish();
        pages.Add(parts.Rules);
        early &= pages.HasRoomOnFirst(parts.Season);
        if (early)
            pages.Add(parts.Season);
        pages.BeginPageTwo();
        pages.Add(new RidesSection(_review, _traces, _fonts, width, _appendix) { IsShort = Sheet.FlowHeight < ShortFlow, StripDepth = strip }.Blocks());
        if (!early)
            pages.Add(parts.Season);
        pages.Add(parts.Sources);
        if (_appendix)
            AddAppendix(pages, width);
        return pages.Finish();
    }

    private void AddAppendix(PageFlow pages, float width)
    {
        pages.BeginPage();
        pages.Add(new EveryRule(_review, _fonts, width).Blocks());
        pages.Add(new TrendSection(_review, _fonts, Sheet).Rest());
        pages.Add(new RidesSection(_review, _traces, _fonts, width, _appendix).Rest());
        pages.Add(new NoticesSection(_review, _fonts, width).Blocks());
        pages.Add(new MethodSection(_review, _fonts, width).Blocks());
    }

    private void AddNote(PageFlow pages)
    {
        if (_first.NoteRest is null)
            return;
        pages.Add(new SectionHead(_fonts, "The coach’s note, continued", Sheet.ContentWidth) { KeepWithNext = true, Outline = "The coach’s note, continued" });
        for (var rest = _first.NoteRest; rest is not null;)
        {
            (var part, rest) = rest.Split(Styles.Body.Leading * 3);
            pages.Add(part);
        }
    }

    private void DrawFurniture(int page, Surface surface)
    {
        var week = $"Week of {Shown.FullDate(_review.Week.StartsOn)}";
        var right = TextLine.Of(_fonts, week, Styles.Small);
        var label = TextLine.Fit(_fonts, _review.Rider.Label, Styles.Small, Sheet.ContentWidth - right.Width - 20);
        label.Draw(surface, Sheet.Left, Sheet.Top + 8.5f);
        right.Draw(surface, Sheet.Right - right.Width, Sheet.Top + 8.5f);
        surface.Hairline(Sheet.Left, Sheet.Right, Sheet.Top + 14);
        surface.Text($"{page + 1} of {Count}", Styles.Tiny, Sheet.Right, Sheet.Bottom - Styles.PageNumberBaseline, Align.End);
    }

    /// <summary>What stands the same in every setting.</summary>
    private sealed record Parts(List<Block> Rules, List<Block> Season, List<Block> Sources);
}
