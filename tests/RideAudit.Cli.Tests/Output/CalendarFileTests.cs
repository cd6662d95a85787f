using System.Text;
using Ical.Net;
using NodaTime;
using RideAudit.Cli.Output;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Cli.Tests.Output;

/// <summary>Calendars, read back by an independent reader (Ical.Net).</summary>
public class CalendarFileTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 6, 22, 7, 0);

    [Fact]
    public void Every_ride_day_is_an_all_day_event_with_its_words()
    {
        var calendar = Calendar.Load(CalendarFile.Write(Layout(), Now))!;
        Assert.Equal(2, calendar.Events.Count);
        var high = calendar.Events.Single(e => e.Summary!.StartsWith("High", StringComparison.Ordinal));
        Assert.Equal("High ride, 1 h 15 min", high.Summary);
        Assert.True(high.IsAllDay);
        Assert.Equal(new DateOnly(2026, 6, 23), high.DtStart!.Date);
        Assert.Equal(new DateOnly(2026, 6, 24), high.DtEnd!.Date);
        Assert.Equal(Layout().Days[1].Sentence + " About 92 points.", high.Description);
    }

    [Fact]
    public void The_same_layout_made_later_names_the_same_events()
    {
        var first = Calendar.Load(CalendarFile.Write(Layout(), Now))!.Events.Select(e => e.Uid).ToList();
        var second = Calendar.Load(CalendarFile.Write(Layout(), Now + Duration.FromDays(1)))!.Events.Select(e => e.Uid).ToList();
        Assert.Equal(first, second);
        Assert.Equal(2, first.Distinct().Count());
    }

    // RFC 5545, section 3.1: lines end in CR LF and are at most 75 octets long.
    [Fact]
    public void Lines_are_folded_at_75_octets_and_end_in_CR_LF()
    {
        var text = CalendarFile.Write(Layout(), Now);
        Assert.EndsWith("END:VCALENDAR\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.All(text.Split("\r\n"), l => Assert.True(Encoding.UTF8.GetByteCount(l) <= 75, l));
    }

    private static NextWeekDocument Layout() => new()
    {
        AsOf = new LocalDate(2026, 6, 22),
        Rider = new RiderEntry { Label = "Rider A", Tier = Tier.Middle, Experience = Experience.Regular, TimeZone = "Europe/Lisbon" },
        StartsOn = new LocalDate(2026, 6, 22),
        IsoWeek = new IsoWeek(2026, 26),
        Exception = null,
        Hours = 2,
        ExpectedStress = 120,
        Days =
        [
            new() { Date = new LocalDate(2026, 6, 22), Kind = DayKind.Rest, Minutes = 0, ExpectedStress = 0, Sentence = "Rest." },
            new() { Date = new LocalDate(2026, 6, 23), Kind = DayKind.High, Minutes = 75, ExpectedStress = 92, Sentence = "Warm up for 15 min; 6 × 5 min at 100 to 106 % (250 to 265 W), 4 min easy between; back\\slash, ünïcödé, 日本語日本語日本語日本語日本語." },
            new() { Date = new LocalDate(2026, 6, 24), Kind = DayKind.Endurance, Minutes = 45, ExpectedStress = 28, Sentence = "Easy." },
        ],
        Findings = [],
        Notes = [],
    };
}
