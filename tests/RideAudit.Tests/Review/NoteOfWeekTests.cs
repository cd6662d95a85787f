using NodaTime;
using RideAudit.Ingest;
using RideAudit.Review;

namespace RideAudit.Tests.Review;

public sealed class NoteOfWeekTests
{
    private static readonly LocalDate Monday = new(2026, 6, 8);

    [Fact]
    public void A_note_with_a_date_in_its_name_belongs_to_the_week_that_holds_it()
    {
        NamedText[] notes = [new("note-2026-06-03.md", "before"), new("note-2026-06-14.md", "this week"), new("note-2026-06-15.md", "after")];

        Assert.Equal("this week", Of(Monday, notes));
        Assert.Equal("before", Of(Monday.PlusDays(-7), notes));
        Assert.Null(Of(Monday.PlusDays(14), notes));
    }

    [Fact]
    public void A_date_in_the_first_line_counts_and_a_line_of_nothing_else_is_left_out()
    {
        Assert.Equal("Ride easy.", Of(Monday, new NamedText("note.md", "# 2026-06-10\n\nRide easy.")));
        Assert.Equal("Week of 2026-06-10: ride easy.", Of(Monday, new NamedText("note.md", "Week of 2026-06-10: ride easy.")));
        Assert.Null(Of(Monday.PlusDays(7), new NamedText("note.md", "2026-06-10\nRide easy.")));
    }

    [Fact]
    public void A_note_without_a_date_belongs_to_the_latest_week_only()
    {
        var note = new NamedText("note.md", "Ride easy.\nOn 2026-01-01 all was well.");

        Assert.NotNull(NoteOfWeek.Choose([note], Monday, isLatest: true));
        Assert.Null(NoteOfWeek.Choose([note], Monday, isLatest: false));
    }

    [Fact]
    public void A_dated_note_comes_before_one_without_a_date_and_two_of_a_week_follow_each_other()
    {
        NamedText[] notes = [new("note-2026-06-08.md", "one"), new("note-2026-06-11.md", "two"), new("note.md", "undated")];

        Assert.Equal("one\n\ntwo", Of(Monday, notes));
    }

    [Fact]
    public void An_old_week_of_the_demo_has_no_undated_note()
    {
        var content = FolderReader.Read(Repository.Demo, DemoReview.Rider, DateTimeZone.Utc, null, CancellationToken.None)
            with
        { Notes = [new NamedText("note.md", "Ride easy.")] };
        string? Note(LocalDate week) => ReviewBuilder.Review(content, DemoReview.Rider, new ReviewRequest { Today = new LocalDate(2026, 6, 22), WeekOf = week })!.Note;

        Assert.Equal("Ride easy.", Note(new LocalDate(2026, 6, 15)));
        Assert.Null(Note(new LocalDate(2026, 5, 25)));
    }

    private static string? Of(LocalDate startsOn, params NamedText[] notes) => NoteOfWeek.Choose([.. notes], startsOn, isLatest: true);
}
