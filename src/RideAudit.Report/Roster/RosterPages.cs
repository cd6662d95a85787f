using RideAudit.Document;
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
    private readonly RosterDocument roster;
    private readonly CautionFooter footer;
    private readonly IReadOnlyList<IReadOnlyList<Placed>> flow;

    public RosterPages(RosterDocument roster, PageOptions options, FontSet fonts)
    {
        this.roster = roster;
        Sheet = new Sheet(options.Paper);
        footer = new CautionFooter(Cautions.All, fonts, Sheet.ContentWidth);
        var pages = new PageFlow(Sheet) { FirstTop = Sheet.Top, FirstBottom = Sheet.Bottom - footer.Height - OverFooter };
        pages.Add(Blocks(fonts));
        flow = pages.Finish();
    }

    /// <inheritdoc/>
    public Sheet Sheet { get; }

    /// <inheritdoc/>
    public int Count => flow.Count;

    /// <inheritdoc/>
    public IEnumerable<OutlineLine> Outline
    {
        get
        {
            for (int page = 0; page < flow.Count; page++)
            {
                for (int i = 0; i < flow[page].Count; i++)
                {
                    if (flow[page][i].Block.Outline is { } title)
                        yield return new OutlineLine(title, Places.Outline(page, i));
                }
            }
        }
    }

    /// <inheritdoc/>
    public void Draw(int page, Surface surface)
    {
        if (page == 0)
            footer.Draw(surface, Sheet.Left, Sheet.Bottom - footer.Height);
        else
            DrawHead(surface);
        surface.Text($"{page + 1} of {Count}", Styles.Tiny, Sheet.Right, Sheet.Bottom - Styles.PageNumberBaseline, Align.End);
        for (int i = 0; i < flow[page].Count; i++)
        {
            (Block block, float y) = flow[page][i];
            if (block.Outline is not null)
                surface.Anchor(Sheet.Left, y, Places.Outline(page, i));
            block.Draw(surface, Sheet.Left, y);
        }
    }

    private IEnumerable<Block> Blocks(FontSet fonts)
    {
        var columns = new RosterColumns(Sheet.ContentWidth);
        var heads = new RosterHeads(columns) { KeepWithNext = true };
        yield return new RosterTop(roster, fonts, Sheet.ContentWidth) { KeepWithNext = !roster.Riders.IsEmpty };
        if (roster.Riders.IsEmpty)
            yield break;
        yield return heads;
        string need = "";
        for (int i = 0; i < roster.Riders.Length; i++)
        {
            RosterEntry rider = roster.Riders[i];
            bool opens = rider.Need != need;
            need = rider.Need;
            yield return new RosterRow(rider, i + 1, columns, fonts)
            {
                RunningHead = heads,
                SpaceBefore = opens && i > 0 ? GroupGap : 0,
                Outline = opens ? Say.Capital(need) : null,
            };
        }

        yield return new HairlineBlock(Sheet.ContentWidth);
    }

    private void DrawHead(Surface surface)
    {
        surface.Text(Say.Count(roster.Riders.Length, "rider"), Styles.Small, Sheet.Left, Sheet.Top + 8.5f);
        string right = RosterWords.Week(roster) is { } week ? $"Week of {Say.Date(week)}" : $"As of {Say.Date(roster.AsOf)}";
        surface.Text(right, Styles.Small, Sheet.Right, Sheet.Top + 8.5f, Align.End);
        surface.Hairline(Sheet.Left, Sheet.Right, Sheet.Top + 14);
    }
}
