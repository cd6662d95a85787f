using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Notes;

namespace RideAudit.Report.Pages;

/// <summary>Page one: who, which week, the verdict, the spacing line, what to change, the split, the figures, what held.</summary>
internal sealed class PageOne
{
    private const float DeepestChart = 250;
    private const float EmptyChart = 80;
    private const float UnderHead = 9;
    private const float UnderNote = 12;
    private const float LeastNote = 110;
    private readonly Sheet _sheet;
    private readonly CautionFooter _footer;
    private readonly List<Placed> _placed = [];

    public PageOne(ReviewDocument review, PageOptions options, FontSet fonts, Sheet sheet)
    {
        _sheet = sheet;
        var width = sheet.ContentWidth;
        _footer = new CautionFooter(review.Summary.Cautions, fonts, width);
        Block[] over = [new PageHead(review, fonts, width), new VerdictBlock(review, fonts, width)];
        var note = WholeNote(review, options, fonts, width);
        var noteLeast = note is null ? 0 : UnderNote + (note is NoteBlock whole ? Math.Min(LeastNote, whole.Height) : note.Height);
        (var density, var under, var room) = Choose(review, options, fonts, Depth(over), noteLeast);
        note = FitNote(note, room - Shallowest(review, density) - UnderNote, fonts);
        var noteDepth = note is null ? 0 : note.Height + UnderNote;
        var chart = Math.Clamp(room - noteDepth, Math.Min(Shallowest(review, density), room - noteDepth), review.Rides.IsEmpty ? EmptyChart : DeepestChart);
        Set(over, note, new SpacingLine(review, fonts, width, chart), under, density, room - noteDepth - chart);
    }

    /// <summary>What of the note did not fit; null when all did.</summary>
    public NoteBlock? NoteRest { get; private set; }

    private float FlowBottom => _sheet.Bottom - _footer.Height - 6;

    /// <summary>Draws the page.</summary>
    public void Draw(Surface surface, int pageCount)
    {
        foreach (var item in _placed)
            item.Block.DrawTagged(surface, _sheet.Left, item.Y);
        _footer.DrawTagged(surface, _sheet.Left, _sheet.Bottom - _footer.Height);
        surface.Tagged(Tag.Artifact, null, () => surface.Text($"1 of {Shown.Number(pageCount)}", Styles.Tiny, _sheet.Right, _sheet.Bottom - Styles.PageNumberBaseline, Align.End));
    }

    private static float Shallowest(ReviewDocument review, Density density) => review.Rides.IsEmpty ? EmptyChart : density.ShallowestChart + (ChangeMarks.Moves(review) ? ChangeMarks.Depth : 0);

    private static float Depth(Block[] blocks) => blocks.Sum(block => block.Height);

    private static float UnderVerdict(Density density) => density.Compact ? 6 : 10;

    private static Block? WholeNote(ReviewDocument review, PageOptions options, FontSet fonts, float width)
    {
        if (string.IsNullOrWhiteSpace(review.Note))
            return options.RoomForNotes ? new RuledRoom(width) : null;
        return NoteBlock.Of(review.Note, fonts, width);
    }

    private (Density Density, Part[] Under, float Room) Choose(ReviewDocument review, PageOptions options, FontSet fonts, float over, float note)
    {
        foreach (var density in Density.RoomyFirst)
        {
            Part[] under = [.. Under(review, options, fonts, density)];
            var room = FlowBottom - _sheet.Top - over - UnderHead - UnderVerdict(density) - under.Sum(part => part.Gap + part.Block.Height);
            if (room >= Shallowest(review, density) + note || density == Density.RoomyFirst[^1])
                return (density, under, room);
        }

        throw new InvalidOperationException("There is always a last density.");
    }

    // What to do follows what is seen; a week without rides has no blocks to explain and nothing to split.
    private IEnumerable<Part> Under(ReviewDocument review, PageOptions options, FontSet fonts, Density density)
    {
        var width = _sheet.ContentWidth;
        var ridden = !review.Rides.IsEmpty;
        float Gap(float roomy, float compact) => density.Compact ? compact : roomy;
        if (ridden)
            yield return new Part(new SpacingKey(review, fonts, width), Gap(6, 3));
        if (!review.Summary.ToChange.IsEmpty)
            yield return new Part(new ToChange(review, fonts, width, density, options.Appendix || ridden), Gap(12, 7));
        if (ridden)
            yield return new Part(new SplitBar(review, fonts, width), Gap(12, 7));
        yield return new Part(new KeyFigures(review, fonts, width, density), Gap(10, 6));
        yield return new Part(new WhatHeld(review.Summary, fonts, width, density), Gap(12, 7));
        yield return new Part(new TextBlock(fonts, DataWords.Of(review), Styles.Small, width), Gap(6, 4));
    }

    private Block? FitNote(Block? note, float depth, FontSet fonts)
    {
        if (note is not NoteBlock whole)
            return note;
        (var head, NoteRest) = whole.SplitOverleaf(depth, fonts);
        return head;
    }

    private void Set(Block[] over, Block? note, Block chart, Part[] under, Density density, float spare)
    {
        var y = Add(over[0], _sheet.Top) + UnderHead;
        y = Add(over[1], y) + UnderVerdict(density) + (spare * 0.15f);
        if (note is not null)
            y = Add(note, y) + UnderNote;
        y = Add(chart, y);
        var extra = Math.Clamp(spare * 0.8f / Math.Max(1, under.Length - 1), 0, 14);
        for (var i = 0; i < under.Length; i++)
            y = Add(under[i].Block, y + under[i].Gap + (i == 0 ? 0 : extra));
    }

    private float Add(Block block, float y)
    {
        _placed.Add(new Placed(block, y));
        return y + block.Height;
    }

    private readonly record struct Part(Block Block, float Gap);
}
