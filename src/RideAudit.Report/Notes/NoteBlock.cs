using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Notes;

/// <summary>The coach's note, or a part of it.</summary>
internal sealed class NoteBlock : Block
{
    private const float Bar = 11;
    private const float ItemIndent = 13;
    private const float ParagraphGap = 5;
    private const float ItemGap = 2;
    private static readonly TextStyle Style = new(Weight.Regular, 10.5f, Palette.Ink);
    private readonly IReadOnlyList<NoteLine> lines;

    private NoteBlock(IReadOnlyList<NoteLine> lines) => this.lines = lines;

    /// <inheritdoc/>
    public override float Height => lines.Select((line, i) => (i == 0 ? 0 : line.SpaceBefore) + line.Text.Leading).Sum();

    /// <summary>Lines in this part.</summary>
    public int Count => lines.Count;

    /// <summary>The whole note.</summary>
    public static NoteBlock Of(string note, FontSet fonts, float width)
    {
        var lines = new List<NoteLine> { new(TextLine.Of(fonts, "From the coach", Styles.SmallStrong), Bar, null, 0) };
        foreach (NoteParagraph paragraph in NoteParser.Parse(note, Style))
        {
            float indent = Bar + (paragraph.Marker is null ? 0 : ItemIndent);
            TextLine? marker = paragraph.Marker is null ? null : TextLine.Of(fonts, paragraph.Marker, Style);
            float space = lines.Count == 1 ? ItemGap : paragraph.Marker is null ? ParagraphGap : ItemGap;
            foreach (TextLine line in LineBreaker.Break(fonts, paragraph.Spans, width - indent))
            {
                lines.Add(new NoteLine(line, indent, marker, space));
                marker = null;
                space = 0;
            }
        }

        return new NoteBlock(lines);
    }

    /// <summary>The lines that fit a depth, and the rest; the rest is null when all fit.</summary>
    public (NoteBlock Head, NoteBlock? Tail) Split(float depth)
    {
        int count = lines.Count;
        while (count > 1 && new NoteBlock([.. lines.Take(count)]).Height > depth)
            count--;
        return (new NoteBlock([.. lines.Take(count)]) { SpaceBefore = SpaceBefore }, count == lines.Count ? null : new NoteBlock([.. lines.Skip(count)]) { SpaceBefore = lines[count].SpaceBefore });
    }

    /// <summary>As <see cref="Split"/>, with a last line that says where the rest stands.</summary>
    public (NoteBlock Head, NoteBlock? Tail) SplitOverleaf(float depth, FontSet fonts)
    {
        var overleaf = new NoteLine(TextLine.Of(fonts, "The note goes on overleaf.", Styles.Small), Bar, null, 0);
        if (Height <= depth)
            return (this, null);
        (NoteBlock head, NoteBlock? tail) = Split(depth - overleaf.Text.Leading);
        return tail is null ? (head, null) : (new NoteBlock([.. head.lines, overleaf]) { SpaceBefore = SpaceBefore }, tail);
    }

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Line(x + 1, y, x + 1, y + Height, Palette.Middle, 1.6f);
        bool first = true;
        foreach (NoteLine line in lines)
        {
            y += first ? 0 : line.SpaceBefore;
            line.Marker?.Draw(surface, x + Bar, y + line.Text.Ascent);
            line.Text.Draw(surface, x + line.Indent, y + line.Text.Ascent);
            y += line.Text.Leading;
            first = false;
        }
    }
}
