using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Pages;
using RideAudit.Report.Words;

namespace RideAudit.Report.Roster;

/// <summary>A roster set on pages, ready to draw in any order.</summary>
internal sealed class RosterPages : IPages
{
    private const float SectionGap = 16;
    private const float OverFooter = 8;
    private readonly RosterDocument _roster;
    private readonly CautionFooter _footer;
    private readonly IReadOnlyList<IReadOnlyList<Placed>> _flow;

    public RosterPages(RosterDocument roster, PageOptions options, FontSet fonts)
    {
        _roster = roster;
        Sheet = new Sheet(options.Paper);
        _footer = new CautionFooter(Cautions.All, fonts, Sheet.ContentWidth);
        var pages = new PageFlow(Sheet) { FirstTop = Sheet.Top, FirstBottom = Sheet.Bottom - _footer.Height - OverFooter };
        pages.Add(Blocks(fonts));
        _flow = pages.Finish();
    }

    /// <inheritdoc/>
    public Sheet Sheet { get; }

    /// <inheritdoc/>
    public int Count => _flow.Count;

    /// <inheritdoc/>
    public IEnumerable<OutlineLine> Outline
    {
        get
        {
            for (var page = 0; page < _flow.Count; page++)
            {
                for (var i = 0; i < _flow[page].Count; i++)
                {
                    if (_flow[page][i].Block.Outline is { } title)
                        yield return new OutlineLine(title, Places.Outline(page, i));
                }
            }
        }
    }

    /// <inheritdoc/>
    public void Draw(int page, Surface surface)
    {
        if (page > 0)
            surface.Tagged(Tag.Artifact, null, () => DrawHead(surface));
        surface.Tagged(Tag.Artifact, null, () => surface.Text($"{page + 1} of {Count}", Styles.Tiny, Sheet.Right, Sheet.Bottom - Styles.PageNumberBaseline, Align.End));
        for (var i = 0; i < _flow[page].Count; i++)
        {
            (var block, var y) = _flow[page][i];
            if (block.Outline is not null)
                surface.Anchor(Sheet.Left, y, Places.Outline(page, i));
            block.DrawTagged(surface, Sheet.Left, y);
        }

        if (page == 0)
            _footer.DrawTagged(surface, Sheet.Left, Sheet.Bottom - _footer.Height);
    }

    private IEnumerable<Block> Blocks(FontSet fonts)
    {
        var width = Sheet.ContentWidth;
        var none = _roster.Riders.IsEmpty;
        yield return new RosterTop(_roster, fonts, width) { KeepWithNext = !none };
        if (none)
            yield break;
        var matrix = new RosterMatrix(_roster, fonts, width);
        yield return matrix.Heads;
        foreach (var row in matrix.Rows())
            yield return row;
        yield return new HairlineBlock(width, 2);
        foreach (var block in Shared(fonts, width).Concat(Each(fonts, width)))
            yield return block;
    }

    private IEnumerable<Block> Shared(FontSet fonts, float width)
    {
        if (_roster.Shared.IsEmpty)
            yield break;
        yield return new SectionHead(fonts, "Told together", width) { SpaceBefore = SectionGap, KeepWithNext = true, Outline = "Told together" };
        foreach (var shared in _roster.Shared)
            yield return new SharedBlock(shared, _roster, fonts, width);
    }

    private IEnumerable<Block> Each(FontSet fonts, float width)
    {
        yield return new SectionHead(fonts, "Rider by rider", width) { SpaceBefore = SectionGap, KeepWithNext = true, Outline = "Rider by rider" };
        yield return new TextBlock(fonts, RosterWords.LineKey, Styles.Tiny, width) { KeepWithNext = true };
        for (var i = 0; i < _roster.Riders.Length; i++)
            yield return new RosterRow(_roster, i, fonts, width);
        yield return new HairlineBlock(width);
    }

    private void DrawHead(Surface surface)
    {
        surface.Text(Shown.Tally(_roster.Riders.Length, "rider"), Styles.Small, Sheet.Left, Sheet.Top + 8.5f);
        var right = RosterWords.Week(_roster) is { } week ? $"Week of {Shown.FullDate(week)}" : $"As of {Shown.FullDate(_roster.AsOf)}";
        surface.Text(right, Styles.Small, Sheet.Right, Sheet.Top + 8.5f, Align.End);
        surface.Hairline(Sheet.Left, Sheet.Right, Sheet.Top + 14);
    }
}
