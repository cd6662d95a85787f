using RideAudit.Document.Notes;
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
    private readonly IReadOnlyList<NoteLine> _lines;

    private NoteBlock(IReadOnlyList<NoteLine> lines) => _lines = lines;

    /// <inheritdoc/>
    public override float Height => _lines.Select((line, i) => (i == 0 ? 0 : line.SpaceBefore) + line.Text.Leading).Sum();

    /// <summary>Lines in this part.</summary>
    public int Count => _lines.Count;

    /// <summary>The whole note.</summary>
    public static NoteBlock Of(string note, FontSet fonts, float width)
    {
        var lines = new List<NoteLine> { new(TextLine.Of(fonts, "From the coach", Styles.SmallStrong), Bar, null, 0) };
        foreach (var paragraph in NoteReader.Read(note))
        {
            var indent = Bar + (paragraph.Marker is null ? 0 : ItemIndent);
            var marker = paragraph.Marker is null ? null : TextLine.Of(fonts, paragraph.Marker, Style);
            var space = lines.Count == 1 ? ItemGap : paragraph.Marker is null ? ParagraphGap : ItemGap;
            foreach (var line in LineBreaker.Break(fonts, paragraph.Spans.Select(s => new Span(s.Text, StyleOf(s.Weight))), width - indent))
            {
                lines.Add(new NoteLine(line, indent, marker, space));
                marker = null;
                space = 0;
            }
        }

        return new NoteBlock(lines);
    }

    private static TextStyle StyleOf(NoteWeight weight) => weight switch
    {
        NoteWeight.Strong => Style with { Weight = Weight.SemiBold },
        NoteWeight.Slanted => Style with { Slanted = true },
        _ => Style,
    };

    /// <summary>The lines that fit a depth, and the rest; the rest is null when all fit.</summary>
    public (NoteBlock Head, NoteBlock? Tail) Split(float depth)
    {
        var (count, height) = (1, (double)_lines[0].Text.Leading);
        while (count < _lines.Count && (float)(height += _lines[count].SpaceBefore + _lines[count].Text.Leading) <= depth)
            count++;
        return (new NoteBlock([.. _lines.Take(count)]) { SpaceBefore = SpaceBefore }, count == _lines.Count ? null : new NoteBlock([.. _lines.Skip(count)]) { SpaceBefore = _lines[count].SpaceBefore });
    }

    /// <summary>As <see cref="Split"/>, with a last line that says where the rest stands.</summary>
    public (NoteBlock Head, NoteBlock? Tail) SplitOverleaf(float depth, FontSet fonts)
    {
        var overleaf = new NoteLine(TextLine.Of(fonts, "The note goes on overleaf.", Styles.Small), Bar, null, 0);
        if (Height <= depth)
            return (this, null);
        (var head, var tail) = Split(depth - overleaf.Text.Leading);
        return tail is null ? (head, null) : (new NoteBlock([.. head._lines, overleaf]) { SpaceBefore = SpaceBefore }, tail);
    }

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Line(x + 1, y, x + 1, y + Height, Palette.Middle, 1.6f);
        var first = true;
        foreach (var line in _lines)
        {
            y += first ? 0 : line.SpaceBefore;
            line.Marker?.Draw(surface, x + Bar, y + line.Text.Ascent);
            line.Text.Draw(surface, x + line.Indent, y + line.Text.Ascent);
            y += line.Text.Leading;
            first = false;
        }
    }
}
