using System.Text;
using Ical.Net;
using NodaTime;
using RideAudit.Cli.Output;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Output;

/// <summary>Calendars, read back by an independent reader (Ical.Net).</summary>
public class CalendarFileTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 6, 22, 7, 0);

    [Fact]
    public void Every_session_is_an_all_day_event_with_its_words()
    {
        var calendar = Calendar.Load(CalendarFile.Write(ToCome.Next(), Now))!;
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
    public void The_same_layout_made_later_names_the_same_events()
    {
        var first = Calendar.Load(CalendarFile.Write(ToCome.Next(), Now))!.Events.Select(e => e.Uid).ToList();
        var second = Calendar.Load(CalendarFile.Write(ToCome.Next(), Now + Duration.FromDays(1)))!.Events.Select(e => e.Uid).ToList();
        Assert.Equal(first, second);
        Assert.Equal(4, first.Distinct().Count());
    }

    // RFC 5545, section 3.1: lines end in CR LF and are at most 75 octets long.
    [Fact]
    public void Lines_are_folded_at_75_octets_and_end_in_CR_LF()
    {
        var text = CalendarFile.Write(ToCome.Next(), Now);
        Assert.EndsWith("END:VCALENDAR\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.All(text.Split("\r\n"), l => Assert.True(Encoding.UTF8.GetByteCount(l) <= 75, l));
    }
}
