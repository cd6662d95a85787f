using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Notes;
using RideAudit.Report.Text;

namespace RideAudit.Report.Tests.Notes;

public sealed class NoteParserTests
{
    private static readonly TextStyle Style = Styles.Body;

    [Fact]
    public void Blank_lines_part_paragraphs_and_single_ends_join()
    {
        var note = NoteParser.Parse("One line\nand the next.\n\nAnother.", Style);

        Assert.Equal(["One line and the next.", "Another."], note.Select(TextOf));
    }

    [Fact]
    public void Lists_have_markers()
    {
        var note = NoteParser.Parse("Do:\n- this\n* that\n1. first\n12) twelfth", Style);

        Assert.Equal([null, "•", "•", "1.", "12)"], note.Select(paragraph => paragraph.Marker));
        Assert.Equal(["Do:", "this", "that", "first", "twelfth"], note.Select(TextOf));
    }

    [Fact]
    public void Emphasis_is_slanted_and_strong_is_semi_bold()
    {
        Span[] spans = [.. NoteParser.Parse("Keep the *long* ride, **all of it** easy, __really__ _so_.", Style)[0].Spans];

        Assert.Equal(["long", "so"], spans.Where(span => span.Style.Slanted).Select(span => span.Text));
        Assert.Equal(["all of it", "really"], spans.Where(span => span.Style.Weight == Weight.SemiBold).Select(span => span.Text));
    }

    [Theory]
    [InlineData("3 * 4 * 5 stays")]
    [InlineData("file_name_here stays")]
    [InlineData("a lone ** stays")]
    public void What_is_not_emphasis_stays_as_written(string text) => Assert.Equal(text, TextOf(Assert.Single(NoteParser.Parse(text, Style))));

    [Fact]
    public void A_heading_is_a_strong_paragraph()
    {
        var heading = NoteParser.Parse("# Next week\nRide easy.", Style)[0];

        Assert.Equal("Next week", TextOf(heading));
        Assert.Equal(Weight.SemiBold, heading.Spans[0].Style.Weight);
    }

    private static string TextOf(NoteParagraph paragraph) => string.Concat(paragraph.Spans.Select(span => span.Text));
}
