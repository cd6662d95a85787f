using System.Text;
using RideAudit.Document.Notes;
using RideAudit.Report.Fonts;
using RideAudit.Report.Notes;

namespace RideAudit.Report.Tests.Notes;

/// <summary>A note as long as any that is read, made of what takes most work.</summary>
public sealed class LongNoteTests
{
    private const float ColumnPt = 300;

    // Steps are counted in allocated bytes, never timed.
    [Theory]
    [InlineData("x")]
    [InlineData("word ")]
    [InlineData("**a ")]
    [InlineData("*a ")]
    [InlineData("_a ")]
    [InlineData("*")]
    [InlineData("- a\n")]
    [InlineData("\n")]
    [InlineData("a\n\n")]
    public void Twice_the_note_takes_about_twice_the_work(string repeated)
    {
        var growth = Work.GrowthOf(
            n => Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat(repeated, n / repeated.Length))),
            bytes => NoteBlock.Of(Encoding.UTF8.GetString(bytes), FontSet.OfThisMachine, ColumnPt),
            6000);
        Assert.InRange(growth, 1, 2.5);
    }

    [Fact]
    public void A_note_of_ten_thousand_lines_is_parted_page_by_page_and_loses_none()
    {
        var block = NoteBlock.Of(string.Concat(Enumerable.Repeat("- a\n", 10_000)), FontSet.OfThisMachine, ColumnPt);
        var (lines, rest) = (0, (NoteBlock?)block);
        while (rest is not null)
        {
            (var head, rest) = rest.Split(600);
            Assert.InRange(head.Height, 0, 600);
            lines += head.Count;
        }
        Assert.Equal(block.Count, lines);
    }

    [Fact]
    public void A_mark_that_nothing_closes_stays_as_written_however_many_follow()
    {
        var note = string.Concat(Enumerable.Repeat("**a ", 8000)).TrimEnd();
        var paragraph = Assert.Single(NoteReader.Read(note));
        Assert.Equal(note, string.Concat(paragraph.Spans.Select(s => s.Text)));
    }
}
