using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Notes;
using RideAudit.Report.Words;
using RideAudit.Review;

namespace RideAudit.Report.Pages;

/// <summary>Page one: who, which week, the verdict, the spacing line, the split, the figures, what to change, what held.</summary>
internal sealed class PageOne
{
    private const float DeepestChart = 250;
    private const float ShallowestChart = 150;
    private const float PageNumberBaseline = 3;
    private readonly Sheet sheet;
    private readonly CautionFooter footer;
    private readonly List<Placed> placed = [];

    public PageOne(ReviewDocument review, PageOptions options, FontSet fonts, Sheet sheet)
    {
        this.sheet = sheet;
        float width = sheet.ContentWidth;
        footer = new CautionFooter(review.Summary, fonts, width);
        var head = new PageHead(review, fonts, width);
        var verdict = new VerdictBlock(review.Summary, fonts, width);
        Block[] under =
        [
            new SpacingKey(review, fonts, width), new SplitBar(review, fonts, width),
            new KeyFigures(review, fonts, width), new ToChange(review.Summary, fonts, width),
        ];
        float[] gaps = [6, 16, 10, 12];
        float room = FlowBottom - sheet.Top - head.Height - 9 - verdict.Height - 10 - under.Sum(block => block.Height) - gaps.Sum();
        Block? note = NoteOf(review, options, fonts, width, room - ShallowestChart - 20);
        float chart = Math.Clamp(room - (note is null ? 0 : note.Height + 12), ShallowestChart, DeepestChart);
        float spare = Math.Max(0, room - chart - (note is null ? 0 : note.Height + 12));

        float y = Add(head, sheet.Top) + 9;
        y = Add(verdict, y) + 10 + (spare * 0.15f);
        if (note is not null)
            y = Add(note, y) + 12;
        y = Add(new SpacingLine(review, fonts, width, chart), y);
        float extra = Math.Min(14, spare * 0.2f);
        for (int i = 0; i < under.Length; i++)
            y = Add(under[i], y + gaps[i] + (i == 0 ? 0 : extra));
    }

    /// <summary>What of the note did not fit; null when all did.</summary>
    public NoteBlock? NoteRest { get; private set; }

    private float FlowBottom => sheet.Bottom - footer.Height - 6;

    /// <summary>Draws the page.</summary>
    public void Draw(Ink ink, int pageCount)
    {
        foreach (Placed item in placed)
            item.Block.Draw(ink, sheet.Left, item.Y);
        footer.Draw(ink, sheet.Left, sheet.Bottom - footer.Height);
        ink.Text($"1 of {Say.Number(pageCount)}", Styles.Tiny, sheet.Right, sheet.Bottom - PageNumberBaseline, Align.End);
    }

    private Block? NoteOf(ReviewDocument review, PageOptions options, FontSet fonts, float width, float depth)
    {
        if (string.IsNullOrWhiteSpace(review.Note))
            return options.RoomForNotes ? new RuledRoom(width) : null;
        (NoteBlock head, NoteRest) = NoteBlock.Of(review.Note, fonts, width).Split(depth);
        return head;
    }

    private float Add(Block block, float y)
    {
        placed.Add(new Placed(block, y));
        return y + block.Height;
    }
}
