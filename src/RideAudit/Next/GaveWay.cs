using RideAudit.Document.Layouts;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Rules;

namespace RideAudit.Next;

/// <summary>Which rules no layout keeps, and why: the search is run again without one thing after another until it keeps more.</summary>
internal static class GaveWay
{
    private const int AnyRoom = 300;

    public static GaveWayEntry? Of(WeekFrame frame, Layout layout, WeekJudge judge)
    {
        var wanting = judge.Wanting(layout.Rides.AsSpan());
        if (wanting.Length == 0)
            return null;
        // A lighter week that waits is a choice, and no matter of the search.
        var waits = frame.LighterWaits is { } why && wanting.Any(r => r is LighterWeek) ? $"A lighter week is due and waits: {why}." : null;
        var others = waits is null ? wanting : wanting.Where(r => r is not LighterWeek).ToArray();
        var gave = others.Length == 0 ? null : $"No layout keeps {Shown.List(others.Select(r => $"“{r.Name}”"))}: {Why(frame, others)}.";
        return new GaveWayEntry([.. wanting.Select(r => r.Id)], string.Join(' ', new[] { gave, waits }.OfType<string>()));
    }

    private static string Why(WeekFrame frame, Rule[] wanting)
    {
        if (frame.Days.Any(d => !d.Standing.IsEmpty) && Helps(frame with { Days = [.. frame.Days.Select(WithoutStanding)] }, wanting))
            return "the rides that stand leave no other";
        if (frame.Days.Any(d => d.Ridden is null && d.Exception is null && d.Free < AnyRoom) && Helps(frame with { Days = [.. frame.Days.Select(WithRoom)] }, wanting))
            return "the days and minutes free leave no other";
        if (wanting.Any(r => r is LongRide) && frame.LongRideGrows)
            return "no ride grows far beyond the longest of late";
        if (frame.Aim.IsStep && wanting.Any(r => r is WeeklyHours))
            return "the hours planned are more than a step from those ridden of late, and they grow in steps";
        if (frame.Days.Any(d => d.Ridden is not null))
            return "it lies in the days of this week that are over";
        var isBack = frame.BackFromIllness || frame.BackFromLongAbsence;
        return !isBack && frame.Days.Any(d => d.Exception is not null and not ExceptionKind.Lighter) ? "the days out leave no other" : "it lies in the weeks ridden before this one";
    }

    private static bool Helps(WeekFrame frame, Rule[] wanting)
    {
        var search = new WeekSearch(frame);
        return search.Find() is { } layout && wanting.Except(search.Judge.Wanting(layout.Rides.AsSpan())).Any();
    }

    private static DayFrame WithoutStanding(DayFrame day) =>
        day.Standing.IsEmpty ? day : day with { Standing = [], Free = Math.Max(day.Free, day.Standing.Sum(r => r.Minutes)) };

    private static DayFrame WithRoom(DayFrame day) =>
        day.Ridden is null && day.Exception is null && day.Standing.IsEmpty ? day with { Free = AnyRoom } : day;
}
