using RideAudit.Report.Flow;
using RideAudit.Report.Look;
using RideAudit.Report.Notes;
using RideAudit.Report.Text;
using RideAudit.Report.Words;
using RideAudit.Review;

namespace RideAudit.Report.Pages;

/// <summary>A review set on pages, ready to draw in any order.</summary>
internal sealed class ReviewPages
{
    private readonly ReviewDocument review;
    private readonly FontSet fonts;
    private readonly PageOne first;
    private readonly IReadOnlyList<IReadOnlyList<Placed>> flow;

    public ReviewPages(ReviewDocument review, PageOptions options, FontSet fonts)
    {
        this.review = review;
        this.fonts = fonts;
        Sheet = new Sheet(options.Paper);
        first = new PageOne(review, options, fonts, Sheet);
        flow = Flow();
    }

    /// <summary>The paper.</summary>
    public Sheet Sheet { get; }

    /// <summary>Number of pages.</summary>
    public int Count => 1 + flow.Count;

    /// <summary>Lines of the outline: title, page from 0, distance of the place from the page's top, pt.</summary>
    public IEnumerable<(string Title, int Page, float Y)> Outline()
    {
        yield return ("The week", 0, Sheet.Top);
        for (int page = 0; page < flow.Count; page++)
        {
            foreach (Placed item in flow[page].Where(item => item.Block.Outline is not null))
                yield return (item.Block.Outline!, page + 1, item.Y);
        }
    }

    /// <summary>Draws a page, counted from 0.</summary>
    public void Draw(int page, Ink ink)
    {
        if (page == 0)
        {
            first.Draw(ink, Count);
            return;
        }

        DrawFurniture(page, ink);
        foreach (Placed item in flow[page - 1])
            item.Block.Draw(ink, Sheet.Left, item.Y);
    }

    private IReadOnlyList<IReadOnlyList<Placed>> Flow()
    {
        float width = Sheet.ContentWidth;
        var pages = new PageFlow(Sheet);
        AddNote(pages);
        pages.Add(new RulesSection(review, fonts, width).Blocks());
        pages.Add(new TrendSection(review, fonts, Sheet).Blocks());
        pages.Add(new RidesSection(review, fonts, width).Blocks());
        pages.Add(new NoticesSection(review, fonts, width).Blocks());
        pages.Add(new MethodSection(review, fonts, width).Blocks());
        return pages.Finish();
    }

    private void AddNote(PageFlow pages)
    {
        if (first.NoteRest is null)
            return;
        pages.Add(new SectionHead(fonts, "The note, continued", Sheet.ContentWidth) { KeepWithNext = true, Outline = "The note, continued" });
        for (NoteBlock? rest = first.NoteRest; rest is not null;)
        {
            (NoteBlock part, rest) = rest.Split(Styles.Body.Leading * 3);
            pages.Add(part);
        }
    }

    private void DrawFurniture(int page, Ink ink)
    {
        string week = $"Week of {Say.Date(review.Week.StartsOn)}";
        TextLine right = TextLine.Of(fonts, week, Styles.Small);
        TextLine label = TextLine.Fit(fonts, review.Rider.Label, Styles.Small, Sheet.ContentWidth - right.Width - 20);
        label.Draw(ink, Sheet.Left, Sheet.Top + 8.5f);
        right.Draw(ink, Sheet.Right - right.Width, Sheet.Top + 8.5f);
        ink.Hairline(Sheet.Left, Sheet.Right, Sheet.Top + 14);
        ink.Text($"{page + 1} of {Count}", Styles.Tiny, Sheet.Right, Sheet.Bottom - 3, Align.End);
    }
}
