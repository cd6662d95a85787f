using RideAudit.Formatting;
using RideAudit.Sessions;

namespace RideAudit.Next;

/// <summary>Why a week looks as it does, one sentence each.</summary>
internal static class NextNotes
{
    private const double NearPlan = 0.95;

    public static IEnumerable<string> Of(WeekFrame frame, Layout layout)
    {
        if (frame.ProposedLighter)
            yield return Lighter(frame);
        if (frame.Exceptions.Event)
            yield return Event(frame, layout);
        if (Return(frame) is { } back)
            yield return back;
        if (frame.Aim.IsStep && frame.Exceptions.None && layout.Facts.Hours < NearPlan * frame.Plan.PlannedHours)
            yield return $"The plan asks for {Shown.Hours(frame.Plan.PlannedHours)}; {Shown.Hours(layout.Facts.Hours)} are a step there from the hours ridden of late.";
        if (LongRide(frame, layout) is { } sentence)
            yield return sentence;
        if (layout.Rides.Any(d => d.Any(r => r.Purpose == SessionPurpose.Test)))
            yield return "A test is due: six weeks without one are enough for a threshold to change.";
        else if (frame is { TestDue: true, TestWaited: false, IsLighter: false })
            yield return $"A test is due; it takes {Shown.Length(SessionLibrary.Test.ShortestDay * 60)}, and this week has no place for it.";
    }

    private static string Lighter(WeekFrame frame)
    {
        var standing = frame.Days.Sum(d => d.Standing.Sum(r => r.Minutes)) / 60.0;
        var why = frame.Calendar.EventDays(frame.StartsOn.PlusDays(7)).IsEmpty ? "no week of late was" : "the next one holds an event";
        return standing > frame.Plan.AskedHours * (1 + frame.Limits.HoursWatchMargin)
            ? $"This week should be lighter, for {why}: {Shown.Hours(frame.Plan.AskedHours)}. The rides that stand are {Shown.Hours(standing)} already."
            : $"This week is laid out as lighter, for {why}.";
    }

    private static string Event(WeekFrame frame, Layout layout)
    {
        var first = frame.Calendar.EventDays(frame.StartsOn)[0];
        if (Days(_ => true).Length == 0)
            return "The day after the event is for rest.";
        var hard = Days(r => r.IsHard);
        var openers = Days(r => r.Purpose == SessionPurpose.Openers);
        string[] with = [.. hard.Length > 0 ? [$"{(hard.Length == 1 ? "one hard session" : "hard sessions")} on {Shown.List(hard)}"] : Array.Empty<string>(), .. openers.Length > 0 ? [$"openers on {Shown.List(openers)}"] : Array.Empty<string>()];
        return $"Riding before the event is short{(hard.Length > 0 ? "" : " and easy")}{(with.Length > 0 ? $", with {Shown.List(with)}" : "")}; the day after it is for rest.";

        string[] Days(Func<StockRide, bool> which) =>
            [.. Enumerable.Range(0, 7).Where(i => frame.Days[i].Date < first && layout.Rides[i].Any(which)).Select(i => Shown.Weekday(frame.Days[i].Date))];
    }

    private static string? Return(WeekFrame frame) =>
        frame.BackFromIllness ? "After the illness the first days are easy and the week is shorter than usual; while it is still felt, rest instead."
        : frame.BackFromLongAbsence ? "After a week or more without riding the first week back is shorter than usual, and nothing in it is hard."
        : null;

    private static string? LongRide(WeekFrame frame, Layout layout)
    {
        if (frame.Exceptions is not { Lighter: false, Away: false, Event: false } || Return(frame) is not null)
            return null;
        var minutes = Math.Round(frame.Limits.LongRideHours * 60);
        var asks = $"The review will ask for a long ride of {Shown.Length(minutes * 60)}";
        if (layout.Facts.Rides.Any(r => r.LongEnough))
            return $"{asks}.";
        var longest = Shown.Length(layout.Facts.LongestRideSeconds);
        return frame.LongRideGrows ? $"{asks}; this week’s longest is {longest}, for no ride grows far beyond the longest of late."
            : frame.Days.Any(d => !d.IsSettled && d.MostMinutes >= minutes) ? $"{asks}; this week’s longest is {longest}, for a longer one would be too much of its hours."
            : $"{asks}; no day has room for more than {longest}.";
    }
}
