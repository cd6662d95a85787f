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
    private const float GroupGap = 6;
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
        if (page == 0)
            _footer.Draw(surface, Sheet.Left, Sheet.Bottom - _footer.Height);
        else
            DrawHead(surface);
        surface.Text($"{page + 1} of {Count}", Styles.Tiny, Sheet.Right, Sheet.Bottom - Styles.PageNumberBaseline, Align.End);
        for (var i = 0; i < _flow[page].Count; i++)
        {
            (var block, var y) = _flow[page][i];
            if (block.Outline is not null)
                surface.Anchor(Sheet.Left, y, Places.Outline(page, i));
            block.Draw(surface, Sheet.Left, y);
        }
    }

    private IEnumerable<Block> Blocks(FontSet fonts)
    {
        var columns = new RosterColumns(Sheet.ContentWidth);
        var heads = new RosterHeads(columns) { KeepWithNext = true };
        yield return new RosterTop(_roster, fonts, Sheet.ContentWidth) { KeepWithNext = !_roster.Riders.IsEmpty };
        if (_roster.Riders.IsEmpty)
            yield break;
        yield return heads;
        RosterNeed? need = null;
        for (var i = 0; i < _roster.Riders.Length; i++)
        {
            var rider = _roster.Riders[i];
            var opens = rider.Need != need;
            need = rider.Need;
            yield return new RosterRow(rider, i + 1, columns, fonts)
            {
                RunningHead = heads,
                SpaceBefore = opens && i > 0 ? GroupGap : 0,
                Outline = opens ? Shown.Capital(Formatting.Words.Of(rider.Need)) : null,
            };
        }

        yield return new HairlineBlock(Sheet.ContentWidth);
    }

    private void DrawHead(Surface surface)
    {
        surface.Text(Shown.Tally(_roster.Riders.Length, "rider"), Styles.Small, Sheet.Left, Sheet.Top + 8.5f);
        var right = RosterWords.Week(_roster) is { } week ? $"Week of {Shown.FullDate(week)}" : $"As of {Shown.FullDate(_roster.AsOf)}";
        surface.Text(right, Styles.Small, Sheet.Right, Sheet.Top + 8.5f, Align.End);
        surface.Hairline(Sheet.Left, Sheet.Right, Sheet.Top + 14);
    }
}
