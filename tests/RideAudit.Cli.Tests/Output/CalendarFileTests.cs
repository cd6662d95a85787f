using System.Text;
using Ical.Net;
using RideAudit.Cli.Output;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Output;

/// <summary>Calendars, read back by an independent reader (Ical.Net).</summary>
public class CalendarFileTests
{
    [Fact]
    public void Every_session_is_an_all_day_event_with_its_words()
    {
        var calendar = Calendar.Load(CalendarFile.Write(ToCome.Next()))!;
        Assert.Equal(4, calendar.Events.Count);
        var high = calendar.Events.Single(e => e.Summary!.StartsWith("Five fives", StringComparison.Ordinal));
        Assert.Equal("Five fives, 1 h 15 min", high.Summary);
        Assert.True(high.IsAllDay);
        Assert.Equal(new DateOnly(2026, 6, 23), high.DtStart!.Date);
        Assert.Equal(new DateOnly(2026, 6, 24), high.DtEnd!.Date);
        Assert.Equal(ToCome.Next().Weeks[0].Days[1].Sessions[0].Sentence + " About 92 points.", high.Description);
        Assert.Contains(calendar.Events, e => e.Summary == "Endurance ride, 45 min");
        Assert.Contains(calendar.Events, e => e.Summary == "Event");
    }

    [Fact]
    public void A_layout_looked_at_from_a_later_day_names_the_same_events_with_a_later_stamp()
    {
        var first = Calendar.Load(CalendarFile.Write(ToCome.Next()))!.Events.ToList();
        var later = Calendar.Load(CalendarFile.Write(ToCome.Next() with { AsOf = ToCome.Monday.PlusDays(1) }))!.Events.ToList();
        Assert.Equal(first.Select(e => e.Uid), later.Select(e => e.Uid));
        Assert.Equal(4, first.Select(e => e.Uid).Distinct().Count());
        Assert.All(first, e => Assert.Equal(new DateTime(2026, 6, 22, 0, 0, 0, DateTimeKind.Utc), e.DtStamp!.AsUtc));
        Assert.All(later, e => Assert.Equal(new DateTime(2026, 6, 23, 0, 0, 0, DateTimeKind.Utc), e.DtStamp!.AsUtc));
    }

    // RFC 5545, section 3.1: lines end in CR LF and are at most 75 octets long.
    [Fact]
    public void Lines_are_folded_at_75_octets_and_end_in_CR_LF()
    {
        var text = CalendarFile.Write(ToCome.Next());
        Assert.EndsWith("END:VCALENDAR\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.All(text.Split("\r\n"), l => Assert.True(Encoding.UTF8.GetByteCount(l) <= 75, l));
    }
}
