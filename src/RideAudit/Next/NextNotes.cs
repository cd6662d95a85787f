using RideAudit.Formatting;
using RideAudit.Sessions;

namespace RideAudit.Next;

/// <summary>Why a week looks as it does, one sentence each.</summary>
internal static class NextNotes
{
    public static IEnumerable<string> Of(WeekFrame frame, Layout layout)
    {
        if (frame.ProposedLighter)
        {
            yield return frame.Calendar.EventDays(frame.StartsOn.PlusDays(7)).IsEmpty
                ? "This week is laid out as lighter, for no week of late was."
                : "This week is laid out as lighter, for the next one holds an event.";
            yield return "Its review knows so from the plan table (--plan), else from [[exception]] with kind = \"lighter\" in the rider file.";
        }
        if (frame.Exceptions.Event)
            yield return $"The days before the event are short and easy{Openers(frame, layout)}; the day after it is for rest.";
        if (frame.Aim.IsStep && !frame.IsLighter)
            yield return $"The plan asks for {Shown.Hours(frame.Plan.PlannedHours)}; {Shown.Hours(layout.Facts.Hours)} are a step there from the hours ridden of late.";
        if (LongRide(frame, layout) is { } sentence)
            yield return sentence;
        if (layout.Rides.Any(d => d.Any(r => r.Purpose == SessionPurpose.Test)))
            yield return "A test is due: six weeks without one are enough for a threshold power to change.";
    }

    private static string Openers(WeekFrame frame, Layout layout)
    {
        var day = Enumerable.Range(0, 7).FirstOrDefault(i => layout.Rides[i].Any(r => r.Purpose == SessionPurpose.Openers), -1);
        return day < 0 ? "" : $", with openers on {Shown.Weekday(frame.Days[day].Date)}";
    }

    private static string? LongRide(WeekFrame frame, Layout layout)
    {
        if (frame.Exceptions is not { Lighter: false, Away: false, Event: false })
            return null;
        var asked = Shown.Length(Math.Round(frame.Limits.LongRideHours * 60) * 60);
        var longest = layout.Facts.LongestRideSeconds;
        if (layout.Facts.Rides.Any(r => r.LongEnough))
            return $"The review will ask for a long ride of {asked}.";
        return frame.Aim.LongMinutes < Math.Floor(frame.Limits.LongRideHours * 60)
            ? $"The review will ask for a long ride of {asked}; this week’s longest is {Shown.Length(longest)}, for no ride grows far beyond the longest of late."
            : $"The review will ask for a long ride of {asked}; no day has room for more than {Shown.Length(longest)}.";
    }
}
