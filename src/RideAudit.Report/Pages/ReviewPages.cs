using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Notes;
using RideAudit.Report.Text;
using RideAudit.Report.Words;

namespace RideAudit.Report.Pages;

/// <summary>A review set on pages, ready to draw in any order.</summary>
internal sealed class ReviewPages : IPages
{
    private const float ShortFlow = 660;
    private readonly ReviewDocument review;
    private readonly ReviewTraces traces;
    private readonly FontSet fonts;
    private readonly bool appendix;
    private readonly PageOne first;
    private readonly IReadOnlyList<IReadOnlyList<Placed>> flow;

    public ReviewPages(ReviewDocument review, PageOptions options, FontSet fonts, ReviewTraces? traces = null)
    {
        this.traces = traces ?? ReviewTraces.None;
        this.review = review;
        this.fonts = fonts;
        Sheet = new Sheet(options.Paper);
        appendix = options.Appendix;
        first = new PageOne(review, options, fonts, Sheet);
        flow = Flow();
    }

    /// <inheritdoc/>
    public Sheet Sheet { get; }

    /// <inheritdoc/>
    public int Count => 1 + flow.Count;

    /// <inheritdoc/>
    public IEnumerable<OutlineLine> Outline
    {
        get
        {
            yield return new OutlineLine("The week", Places.Outline(0, 0));
            for (int page = 0; page < flow.Count; page++)
            {
                for (int i = 0; i < flow[page].Count; i++)
                {
                    if (flow[page][i].Block.Outline is { } title)
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
            first.Draw(surface, Count);
            return;
        }

        DrawFurniture(page, surface);
        for (int i = 0; i < flow[page - 1].Count; i++)
        {
            (Block block, float y) = flow[page - 1][i];
            if (block.Outline is not null)
                surface.Anchor(Sheet.Left, y, Places.Outline(page, i));
            block.Draw(surface, Sheet.Left, y);
        }
    }

    private IReadOnlyList<IReadOnlyList<Placed>> Flow()
    {
        float width = Sheet.ContentWidth;
        var pages = new PageFlow(Sheet);
        AddNote(pages);
        if (review.Rides.IsEmpty && !appendix)
            return pages.Finish();
        var marks = new SourceMarks(review);
        pages.Add(new RulesSection(review, marks, fonts, width).Blocks());
        pages.Add(new PlannedSection(review, fonts, width).Blocks());
        pages.Add(new TrendSection(review, fonts, Sheet).Blocks());
        List<Block> season = [.. new ImprovementSection(review, fonts, width).Blocks()];
        bool early = pages.HasRoomOnFirst(season);
        if (early)
            pages.Add(season);
        pages.BeginPageTwo();
        pages.Add(new RidesSection(review, traces, fonts, width, appendix) { IsShort = Sheet.FlowHeight < ShortFlow }.Blocks());
        if (!early)
            pages.Add(season);
        pages.Add(new SourcesSection(review, marks, fonts, width, appendix).Blocks());
        if (appendix)
            AddAppendix(pages, width);
        return pages.Finish();
    }

    private void AddAppendix(PageFlow pages, float width)
    {
        pages.BeginPage();
        pages.Add(new EveryRule(review, fonts, width).Blocks());
        pages.Add(new TrendSection(review, fonts, Sheet).Rest());
        pages.Add(new RidesSection(review, traces, fonts, width, appendix).Rest());
        pages.Add(new NoticesSection(review, fonts, width).Blocks());
        pages.Add(new MethodSection(review, fonts, width).Blocks());
    }

    private void AddNote(PageFlow pages)
    {
        if (first.NoteRest is null)
            return;
        pages.Add(new SectionHead(fonts, "The coach’s note, continued", Sheet.ContentWidth) { KeepWithNext = true, Outline = "The coach’s note, continued" });
        for (NoteBlock? rest = first.NoteRest; rest is not null;)
        {
            (NoteBlock part, rest) = rest.Split(Styles.Body.Leading * 3);
            pages.Add(part);
        }
    }

    private void DrawFurniture(int page, Surface surface)
    {
        string week = $"Week of {Shown.FullDate(review.Week.StartsOn)}";
        TextLine right = TextLine.Of(fonts, week, Styles.Small);
        TextLine label = TextLine.Fit(fonts, review.Rider.Label, Styles.Small, Sheet.ContentWidth - right.Width - 20);
        label.Draw(surface, Sheet.Left, Sheet.Top + 8.5f);
        right.Draw(surface, Sheet.Right - right.Width, Sheet.Top + 8.5f);
        surface.Hairline(Sheet.Left, Sheet.Right, Sheet.Top + 14);
        surface.Text($"{page + 1} of {Count}", Styles.Tiny, Sheet.Right, Sheet.Bottom - Styles.PageNumberBaseline, Align.End);
    }
}
