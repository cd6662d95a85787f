using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Held;
using RideAudit.Plan;

namespace RideAudit.Cli.Output;

/// <summary>What was planned and what became of it, a line a session.</summary>
internal static class PlannedLines
{
    /// <summary>Every session and every ride that nobody planned; nothing for a week without a plan.</summary>
    public static void All(Page page, WeekEntry week)
    {
        foreach (var line in week.PlannedAndRidden)
            page.Hanging("- ", line.RepeatsSentence is { } repeats ? $"{line.Sentence} {repeats}" : line.Sentence);
        Plan(page, week);
    }

    /// <summary>What came otherwise than planned; nothing for a week without a plan.</summary>
    public static void Changed(Page page, WeekEntry week)
    {
        if (week.Planned is null)
            return;
        var changed = week.PlannedAndRidden.Where(l => l.Outcomes is not [HeldOutcome.Done]).ToList();
        if (changed.Count == 0 && week.PlannedAndRidden.Any(l => l.Planned is { Kind: not PlannedKind.Rest }))
            page.Text(week.Finished ? "Every session was ridden as planned." : "Every session so far was ridden as planned.");
        foreach (var line in changed)
            page.Hanging("- ", line.Sentence);
        Plan(page, week);
    }

    private static void Plan(Page page, WeekEntry week)
    {
        if (week.Planned?.Sentence is { } sentence)
            page.Text(sentence);
    }
}
