using RideAudit.Document.Notes;

namespace RideAudit.Tests.Document;

public sealed class NoteReaderTests
{
    [Theory]
    [InlineData("# Note\n\nRide **easy**.", "Note\n\nRide easy.")]
    [InlineData("* one\n* _two_ of three", "- one\n- two of three")]
    [InlineData("See [the plan](https://example.org/plan).", "See the plan.")]
    [InlineData("One line\nand the next.\n\nAnother.", "One line and the next.\n\nAnother.")]
    [InlineData("a lone ** stays", "a lone ** stays")]
    [InlineData("Keep __really__ _so_.", "Keep really so.")]
    [InlineData("3 * 4 min and snake_case_name stay", "3 * 4 min and snake_case_name stay")]
    [InlineData("A line\nthat goes on.\n\n1. first\n2) second\n\nLast, `as typed`.", "A line that goes on.\n\n1. first\n2) second\n\nLast, as typed.")]
    public void Marks_are_left_out_and_the_words_stay(string note, string expected) => Assert.Equal(expected, NoteReader.Plain(note));

    [Fact]
    public void Lists_have_markers()
    {
        var note = NoteReader.Read("Do:\n- this\n* that\n1. first\n12) twelfth");

        Assert.Equal([null, "•", "•", "1.", "12)"], note.Select(p => p.Marker));
        Assert.Equal(["Do:", "this", "that", "first", "twelfth"], note.Select(p => p.Text));
    }

    [Fact]
    public void Emphasis_is_told_apart_and_a_heading_is_strong()
    {
        var paragraphs = NoteReader.Read("## Next *week*\nRide **easy**, not *fast*.");

        Assert.Equal([new NoteSpan("Next week", NoteWeight.Strong)], paragraphs[0].Spans.ToArray());
        Assert.Equal(
            [new NoteSpan("Ride "), new NoteSpan("easy", NoteWeight.Strong), new NoteSpan(", not "), new NoteSpan("fast", NoteWeight.Slanted), new NoteSpan(".")],
            paragraphs[1].Spans.ToArray());
    }
}
