using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Notes;
using RideAudit.Report.Words;

namespace RideAudit.Report.Pages;

/// <summary>Page one: who, which week, the verdict, the spacing line, the split, the figures, what to change, what held.</summary>
internal sealed class PageOne
{
    private const float DeepestChart = 250;
    private const float UnderHead = 9;
    private const float UnderNote = 12;
    private const float LeastNote = 110;
    private readonly Sheet sheet;
    private readonly CautionFooter footer;
    private readonly List<Placed> placed = [];

    public PageOne(ReviewDocument review, PageOptions options, FontSet fonts, Sheet sheet)
    {
        this.sheet = sheet;
        float width = sheet.ContentWidth;
        footer = new CautionFooter(review.Summary.Cautions, fonts, width);
        Block[] over = [new PageHead(review, fonts, width), new VerdictBlock(review.Summary, fonts, width)];
        Block? note = WholeNote(review, options, fonts, width);
        float noteLeast = note is null ? 0 : UnderNote + (note is NoteBlock whole ? Math.Min(LeastNote, whole.Height) : note.Height);
        (Density density, Block[] under, float room) = Choose(review, options, fonts, Depth(over), noteLeast);
        note = FitNote(note, room - Shallowest(review, density) - UnderNote, fonts);
        float noteDepth = note is null ? 0 : note.Height + UnderNote;
        float chart = Math.Clamp(room - noteDepth, Math.Min(Shallowest(review, density), room - noteDepth), review.Rides.IsEmpty ? Shallowest(review, density) : DeepestChart);
        Set(over, note, new SpacingLine(review, fonts, width, chart), under, density, room - noteDepth - chart);
    }

    /// <summary>What of the note did not fit; null when all did.</summary>
    public NoteBlock? NoteRest { get; private set; }

    private float FlowBottom => sheet.Bottom - footer.Height - 6;

    /// <summary>Draws the page.</summary>
    public void Draw(Surface surface, int pageCount)
    {
        foreach (Placed item in placed)
            item.Block.Draw(surface, sheet.Left, item.Y);
        footer.Draw(surface, sheet.Left, sheet.Bottom - footer.Height);
        surface.Text($"1 of {Shown.Number(pageCount)}", Styles.Tiny, sheet.Right, sheet.Bottom - Styles.PageNumberBaseline, Align.End);
    }

    private static float Shallowest(ReviewDocument review, Density density) => density.ShallowestChart + (ChangeMarks.Moves(review) ? ChangeMarks.Depth : 0);

    private static float Depth(Block[] blocks) => blocks.Sum(block => block.Height);

    private static float[] Gaps(Density density) => density.Compact ? [3, 9, 7, 7, 4] : [6, 14, 10, 12, 6];

    private static float UnderVerdict(Density density) => density.Compact ? 6 : 10;

    private static Block? WholeNote(ReviewDocument review, PageOptions options, FontSet fonts, float width)
    {
        if (string.IsNullOrWhiteSpace(review.Note))
            return options.RoomForNotes ? new RuledRoom(width) : null;
        return NoteBlock.Of(review.Note, fonts, width);
    }

    private (Density Density, Block[] Under, float Room) Choose(ReviewDocument review, PageOptions options, FontSet fonts, float over, float note)
    {
        float width = sheet.ContentWidth;
        foreach (Density density in Density.RoomyFirst)
        {
            Block[] under =
            [
                new SpacingKey(review, fonts, width), new SplitBar(review, fonts, width),
                new KeyFigures(review, fonts, width, density), new ToChange(review, fonts, width, density, options.Appendix || !review.Rides.IsEmpty),
                new TextBlock(fonts, DataLine.Of(review), Styles.Small, width),
            ];
            float room = FlowBottom - sheet.Top - over - UnderHead - UnderVerdict(density) - Depth(under) - Gaps(density).Sum();
            if (room >= Shallowest(review, density) + note || density == Density.RoomyFirst[^1])
                return (density, under, room);
        }

        throw new InvalidOperationException("There is always a last density.");
    }

    private Block? FitNote(Block? note, float depth, FontSet fonts)
    {
        if (note is not NoteBlock whole)
            return note;
        (NoteBlock head, NoteRest) = whole.SplitOverleaf(depth, fonts);
        return head;
    }

    private void Set(Block[] over, Block? note, Block chart, Block[] under, Density density, float spare)
    {
        float y = Add(over[0], sheet.Top) + UnderHead;
        y = Add(over[1], y) + UnderVerdict(density) + (spare * 0.15f);
        if (note is not null)
            y = Add(note, y) + UnderNote;
        y = Add(chart, y);
        float extra = Math.Clamp(spare * 0.2f, 0, 14);
        float[] gaps = Gaps(density);
        for (int i = 0; i < under.Length; i++)
            y = Add(under[i], y + gaps[i] + (i == 0 ? 0 : extra));
    }

    private float Add(Block block, float y)
    {
        placed.Add(new Placed(block, y));
        return y + block.Height;
    }
}
