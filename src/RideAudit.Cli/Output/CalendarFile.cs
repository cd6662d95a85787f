using System.Security.Cryptography;
using System.Text;
using NodaTime;
using NodaTime.Text;
using RideAudit.Document.Layouts;
using RideAudit.Formatting;
using RideAudit.Plan;

namespace RideAudit.Cli.Output;

/// <summary>Weeks to come as an iCalendar file (RFC 5545): one all-day event a session, so that no time zone is needed.</summary>
internal static class CalendarFile
{
    private const int MostOctets = 75;
    private static readonly LocalDatePattern Date = LocalDatePattern.CreateWithInvariantCulture("uuuuMMdd");

    /// <summary>The calendar's text, lines ending in CR LF.</summary>
    /// <param name="document">The weeks.</param>
    /// <remarks>The events are stamped with the day that the layout looks from, not with the hour it is made in: the same layout gives the same bytes.</remarks>
    public static string Write(NextDocument document)
    {
        var text = new StringBuilder();
        Line(text, "BEGIN:VCALENDAR");
        Line(text, "VERSION:2.0");
        Line(text, "PRODID:-//RideAudit//rideaudit next//EN");
        Line(text, "CALSCALE:GREGORIAN");
        var who = Name(document.Rider.Label);
        foreach (var day in document.Weeks.SelectMany(w => w.Days))
            for (var i = 0; i < day.Sessions.Length; i++)
                Event(text, day, i, who, document.AsOf);
        Line(text, "END:VCALENDAR");
        return text.ToString();
    }

    // The same rider, day and place in the day make the same event, so that a layout imported again replaces the old one.
    private static void Event(StringBuilder text, NextDayEntry day, int which, string who, LocalDate asOf)
    {
        var session = day.Sessions[which];
        Line(text, "BEGIN:VEVENT");
        Line(text, $"UID:{Date.Format(day.Date)}-{(which > 0 ? $"{which + 1}-" : "")}{who}@rideaudit");
        Line(text, $"DTSTAMP:{Date.Format(asOf)}T000000Z");
        Line(text, $"DTSTART;VALUE=DATE:{Date.Format(day.Date)}");
        Line(text, $"DTEND;VALUE=DATE:{Date.Format(day.Date.PlusDays(1))}");
        Line(text, $"SUMMARY:{Escaped(Summary(session))}");
        Line(text, $"DESCRIPTION:{Escaped(session.ExpectedStress is { } stress ? $"{session.Sentence} About {Shown.Points(stress)}." : session.Sentence)}");
        Line(text, "TRANSP:TRANSPARENT");
        Line(text, "END:VEVENT");
    }

    private static string Summary(NextSessionEntry session)
    {
        var called = session.Session is { } name ? Shown.Capital(name) : session.Kind == PlannedKind.Event ? "Event" : $"{Shown.Capital(Words.Of(session.Kind))} ride";
        return session.Minutes > 0 ? $"{called}, {Shown.Length(session.Minutes * 60)}" : called;
    }

    private static string Name(string label) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(label)).AsSpan(0, 6));

    // RFC 5545, 3.3.11: no control characters in a text, whatever a session or a label holds.
    private static string Escaped(string text) => PlainText.Of(text.ReplaceLineEndings("\n"), ' ', keepLines: true)
        .Replace("\\", "\\\\", StringComparison.Ordinal)
        .Replace(";", "\\;", StringComparison.Ordinal)
        .Replace(",", "\\,", StringComparison.Ordinal)
        .Replace("\n", "\\n", StringComparison.Ordinal)
        .Replace('\u00A0', ' ');

    private static void Line(StringBuilder text, string line)
    {
        var octets = 0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > MostOctets)
            {
                text.Append("\r\n ");
                octets = 1;
            }
            text.Append(rune);
            octets += rune.Utf8SequenceLength;
        }
        text.Append("\r\n");
    }
}
