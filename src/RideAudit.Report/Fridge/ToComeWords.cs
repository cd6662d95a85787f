using System.Collections.Immutable;
using RideAudit.Document.Layouts;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Rules;

namespace RideAudit.Report.Fridge;

/// <summary>What is said of weeks to come on paper.</summary>
internal static class ToComeWords
{
    /// <summary>Which weeks the pages are of.</summary>
    public static string Span(NextDocument document) => document.Weeks.Length == 1
        ? $"week of {Shown.FullDate(document.Weeks[0].StartsOn)}"
        : $"{Shown.FullDate(document.Weeks[0].StartsOn)} to {Shown.FullDate(document.Weeks[^1].StartsOn.PlusDays(6))}";

    /// <summary>The days that matter: <c>Hard on Tuesday and Thursday, long on Saturday</c>.</summary>
    public static string Headline(NextWeekEntry week)
    {
        var parts = new[]
        {
            On("event on", week, s => s.Kind == PlannedKind.Event, d => d.Exception == ExceptionKind.Event),
            On("hard on", week, s => s.Kind is PlannedKind.High or PlannedKind.Threshold),
            On("long on", week, s => s.Kind == PlannedKind.Long),
        };
        var said = string.Join(", ", parts.Where(p => p.Length > 0));
        return Shown.Capital(said.Length > 0 ? said
            : week.Days.Any(d => !d.Sessions.IsEmpty) ? "easy riding alone"
            : week.Days.Any(d => d.RiddenMinutes > 0) ? "nothing more this week" : "no riding");
    }

    /// <summary>What the week comes to: <c>5 rides, 6.4 h, about 372 points of training stress</c>.</summary>
    public static string Sums(NextWeekEntry week)
    {
        var rides = week.Days.Sum(d => d.Sessions.Length + (d.RiddenMinutes > 0 ? 1 : 0));
        var hours = week.AskedOtherwise is { } asked ? $"{Shown.Hours(week.Hours)} of {Shown.Hours(asked)} asked for" : Shown.Hours(week.Hours);
        return $"{Shown.Tally(rides, "ride")}, {hours}, about {Shown.Points(week.ExpectedStress)} of training stress";
    }

    /// <summary>What sets the week apart; null for an ordinary one.</summary>
    public static string? Apart(NextWeekEntry week)
    {
        var kind = week.Exception is { } exception ? $"{Formatting.Words.Of(exception)} week" : week.ProposedLighter ? "lighter week" : null;
        var tests = week.Days.Any(d => d.Sessions.Any(s => s.CalledFor == "test"));
        return (kind, tests) switch
        {
            (null, true) => "test week",
            ({ } known, true) => $"{known} with a test",
            _ => kind,
        };
    }

    /// <summary>The names of the week's events; null where it has none.</summary>
    public static string? Events(NextWeekEntry week)
    {
        string[] names = [.. week.Days.SelectMany(d => d.Sessions).Where(s => s.Kind == PlannedKind.Event).Select(s => s.Session).OfType<string>()];
        return names.Length == 0 ? null : Shown.List(names);
    }

    /// <summary>A day in a word.</summary>
    public static string Day(NextDayEntry day) => day switch
    {
        { Sessions: [{ } only] } => only.CalledFor ?? Formatting.Words.Of(only.Kind),
        { Sessions.Length: > 1 } => Shown.Tally(day.Sessions.Length, "ride"),
        { RiddenMinutes: > 0 } => Formatting.Words.Of(day.Kind),
        { Exception: { } exception and not ExceptionKind.Lighter } => Formatting.Words.Of(exception),
        _ => "rest",
    };

    /// <summary>A day's length; empty for one without riding, or with an event of unknown length.</summary>
    public static string Length(NextDayEntry day)
    {
        var minutes = day.Minutes > 0 ? day.Minutes : day.RiddenMinutes;
        return minutes > 0 ? Shown.Length(minutes * 60) : "";
    }

    /// <summary>How far a session's minutes may be from those printed; null where they may not be.</summary>
    public static string? Range(NextSessionEntry session) =>
        session.MinutesFrom == session.MinutesTo ? null : $"{Shown.TableLength(session.MinutesFrom * 60)} to {Shown.TableLength(session.MinutesTo * 60)}";

    /// <summary>A session in words: its name and what to ride.</summary>
    public static string Told(NextSessionEntry session) => string.Join(
        ' ', new[] { session.Session is { } name ? Shown.Sentence(name) : "", session.Sentence }.Where(t => t.Length > 0));

    /// <summary>What the rules say of the week ridden so; null where nothing was judged.</summary>
    public static string? Judged(NextWeekEntry week)
    {
        if (week.Verdicts.IsDefaultOrEmpty)
            return null;
        ImmutableArray<Finding> wanting = [.. week.Verdicts.Where(v => v.Verdict is Verdict.Watch or Verdict.Broken)];
        return wanting.IsEmpty
            ? "Ridden so, the week keeps every rule that can be judged."
            : $"Ridden so, the rules would say: {string.Join(' ', wanting.OrderByDescending(v => v.Verdict).Select(v => v.Sentence))}";
    }

    private static string On(string lead, NextWeekEntry week, Func<NextSessionEntry, bool> which, Func<NextDayEntry, bool>? orDay = null)
    {
        string[] days = [.. week.Days.Where(d => d.Sessions.Any(which) || orDay?.Invoke(d) == true).Select(d => Shown.Weekday(d.Date))];
        return days.Length == 0 ? "" : $"{lead} {Shown.List(days)}";
    }
}
