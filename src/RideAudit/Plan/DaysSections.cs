using System.Collections.Immutable;
using NodaTime;
using RideAudit.Plan.Blocks;
using RideAudit.Plan.Toml;

namespace RideAudit.Plan;

/// <summary>Reads what the rider file says of single days and sessions: exceptions, dated hours, minutes free, fixed rides, own sessions.</summary>
internal static class DaysSections
{
    private const int MostMinutes = 24 * 60;

    private static readonly (string, ExceptionKind)[] Kinds =
        [("lighter", ExceptionKind.Lighter), ("event", ExceptionKind.Event), ("away", ExceptionKind.Away), ("ill", ExceptionKind.Ill)];

    public static ImmutableArray<PlanException> ReadExceptions(List<TomlSection> sections)
    {
        var exceptions = new List<PlanException>();
        foreach (var section in sections)
        {
            var from = section.Date("from");
            var to = section.Date("to");
            var kind = section.Choice("kind", Kinds);
            Need(section, "from", "an exception", "its first day");
            Need(section, "kind", "an exception", "lighter, event, away or ill");
            if (to < from)
                section.AddAt(section.PlaceOf("to"), "to before from", "to: its last day, not before from");
            section.RejectUnknown();
            if (from is { } first && kind is { } why)
                exceptions.Add(new PlanException(first, to ?? first, why));
        }
        return [.. exceptions.OrderBy(e => e.From).ThenBy(e => e.To)];
    }

    public static ImmutableArray<HoursEntry> ReadHours(List<TomlSection> sections)
    {
        var entries = ImmutableArray.CreateBuilder<HoursEntry>();
        foreach (var section in sections)
        {
            var from = section.Date("from");
            var weekly = section.Number("weekly", RiderFileRanges.WeeklyHours.Least, RiderFileRanges.WeeklyHours.Most, "h");
            Need(section, "from", "planned hours", "the first day of the first week they hold for");
            Need(section, "weekly", "planned hours", "hours a week");
            section.RejectUnknown();
            if (from is not { } date)
                continue;
            if (entries.Count > 0 && date <= entries[^1].From)
                section.AddAt(section.PlaceOf("from"), date == entries[^1].From ? "the same date as the hours before" : "a date before that of the hours before", "hours in order of date, each date once");
            entries.Add(new HoursEntry(date, weekly ?? 0));
        }
        return entries.ToImmutable();
    }

    public static ImmutableSortedDictionary<IsoDayOfWeek, int>? ReadMinutesFree(TomlSection? section)
    {
        if (section is null)
            return null;
        var minutes = ImmutableSortedDictionary.CreateBuilder<IsoDayOfWeek, int>();
        foreach (var (word, day) in PlanSection.Weekdays)
        {
            if (section.Number(word, 0, MostMinutes, "min", whole: true) is { } free)
                minutes[day] = (int)free;
        }
        section.RejectUnknown();
        if (!PlanSection.Weekdays.Any(d => section.Has(d.Word)))
            section.AddAt(section.Place, "no day with minutes", "at least one weekday with its minutes, or no table [days]");
        return minutes.ToImmutable();
    }

    public static ImmutableArray<FixedRide> ReadFixedRides(List<TomlSection> sections)
    {
        var rides = ImmutableArray.CreateBuilder<FixedRide>();
        foreach (var section in sections)
        {
            var day = section.Choice("day", PlanSection.Weekdays);
            var kind = section.Choice("kind", PlannedKinds.Rides);
            var minutes = Minutes(section);
            var name = section.Text("session", "its name");
            Need(section, "day", "a fixed ride", "its weekday");
            Need(section, "kind", "a fixed ride", AllowedKinds);
            Need(section, "minutes", "a fixed ride", "its length");
            section.RejectUnknown();
            if (day is { } weekday && kind is { } what && minutes is { } length)
                rides.Add(new FixedRide(weekday, what, length, name));
        }
        return rides.ToImmutable();
    }

    public static ImmutableArray<OwnSession> ReadSessions(List<TomlSection> sections)
    {
        var sessions = ImmutableArray.CreateBuilder<OwnSession>();
        foreach (var section in sections)
        {
            var name = section.Text("session", "its name");
            var kind = section.Choice("kind", PlannedKinds.Rides);
            var minutes = Minutes(section);
            var blocks = ReadBlocks(section);
            Need(section, "session", "a session", "its name");
            Need(section, "kind", "a session", AllowedKinds);
            Need(section, "minutes", "a session", "its length");
            Need(section, "blocks", "a session", "what to ride, such as \"15 min easy, 4 x 6 min 100-106 %, 3 min easy between, easy to the end\"");
            section.RejectUnknown();
            if (name is not null && sessions.Any(s => s.Session.Equals(name, StringComparison.OrdinalIgnoreCase)))
                section.AddAt(section.PlaceOf("session"), $"the session \"{TomlWords.Shortened(name)}\" a second time", "each name once");
            if (name is not null && kind is { } what && minutes is { } length && blocks is not null)
                sessions.Add(new OwnSession(name, what, length, blocks));
        }
        return sessions.ToImmutable();
    }

    public static ImmutableArray<SetAsideRule> ReadSetAside(List<TomlSection> sections, IReadOnlyList<string>? ruleIds)
    {
        var rules = ImmutableArray.CreateBuilder<SetAsideRule>();
        foreach (var section in sections)
        {
            var rule = ruleIds is null ? section.Text("rule", "the id of a rule")
                : section.Choice("rule", ruleIds.Select((id, i) => (id, i)).ToList()) is { } index ? ruleIds[index] : null;
            var until = section.Date("until");
            var why = section.Text("why", "the reason, in a few words");
            Need(section, "rule", "a rule set aside", "its id; the rules command lists them");
            Need(section, "until", "a rule set aside", "the last day it is set aside for");
            Need(section, "why", "a rule set aside", "the reason, in a few words");
            section.RejectUnknown();
            if (rule is not null && until is { } last && why is not null)
                rules.Add(new SetAsideRule(rule, last, why));
        }
        return rules.ToImmutable();
    }

    private static string AllowedKinds => TomlSection.Words(PlannedKinds.Rides);

    private static int? Minutes(TomlSection section) => (int?)section.Number("minutes", 1, MostMinutes, "min", whole: true);

    private static SessionBlocks? ReadBlocks(TomlSection section)
    {
        if (section.Text("blocks", "what to ride, in words", trim: false) is not { } text)
            return null;
        var blocks = SessionBlocks.Read(text, out var mistakes);
        var (line, column) = section.TextPlace("blocks");
        foreach (var mistake in mistakes)
            section.AddAt(new TomlPlace(line, column + mistake.Column - 1), $"{mistake.Found} in blocks", $"blocks: {mistake.Allowed}", mistake.Nearest);
        return blocks;
    }

    private static void Need(TomlSection section, string key, string what, string allowed)
    {
        if (!section.Has(key))
            section.AddAt(section.Place, $"{what} without {key}", $"{key}: {allowed}");
    }
}
