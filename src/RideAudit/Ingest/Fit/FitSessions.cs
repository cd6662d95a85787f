using RideAudit.Fit;
using RideAudit.Fit.Messages;

namespace RideAudit.Ingest.Fit;

/// <summary>Tells which time belongs to which session. Where a summary stands in the file says nothing.</summary>
internal static class FitSessions
{
    /// <summary>Sessions in order of time; one window without session where the part has none.</summary>
    public static IReadOnlyList<(FitSession? Session, Window Window)> Of(FitPart part, FitClock clock)
    {
        // A session written twice, first and last in the file, is one session: the later text counts.
        var sessions = part.Sessions
            .Where(s => s.StartTime is not null)
            .GroupBy(s => s.StartTime)
            .Select(g => g.MaxBy(s => s.FileOrder)!)
            .OrderBy(s => clock.Unix(s.StartTime!.Value))
            .ToArray();
        if (sessions.Length <= 1)
            return [(sessions.FirstOrDefault() ?? part.Sessions.LastOrDefault(), Window.All)];
        long StartOf(int i) => clock.Unix(sessions[i].StartTime!.Value);
        return [.. sessions.Select((s, i) => ((FitSession?)s, new Window(
            i == 0 ? long.MinValue : StartOf(i),
            i == sessions.Length - 1 ? long.MaxValue : StartOf(i + 1))))];
    }

    /// <summary>The clock time of one session.</summary>
    /// <param name="From">First second, Unix.</param>
    /// <param name="To">The second after the last: a boundary record belongs to the later session.</param>
    internal readonly record struct Window(long From, long To)
    {
        public static Window All => new(long.MinValue, long.MaxValue);

        public bool Holds(long second) => second >= From && second < To;
    }
}
