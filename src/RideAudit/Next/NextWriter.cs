using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Document.Layouts;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Sessions;

namespace RideAudit.Next;

/// <summary>Puts a layout in its document.</summary>
internal static class NextWriter
{
    /// <summary>The entry of a week laid out.</summary>
    public static NextWeekEntry Week(WeekFrame frame, Layout layout, WeekJudge judge, PlanTable table, ImmutableArray<string> missed)
    {
        var ranges = PrintedRanges.Of(frame, layout, judge);
        var measures = SessionMeasures.Of(frame.Rider, frame.StartsOn);
        return new NextWeekEntry
        {
            StartsOn = frame.StartsOn,
            IsoWeek = IsoWeek.StartingOn(frame.StartsOn),
            From = frame.Days.FirstOrDefault(d => d.Ridden is null)?.Date ?? frame.StartsOn.PlusDays(6),
            Exception = frame.Exceptions.Leading,
            ProposedLighter = frame.ProposedLighter,
            Hours = layout.Facts.Hours,
            AskedHours = frame.Plan.AskedHours,
            ExpectedStress = layout.Facts.Stress,
            LongRideMinutes = frame.Exceptions is { Lighter: false, Away: false, Event: false } ? (int)Math.Round(frame.Limits.LongRideHours * 60) : null,
            Days = [.. frame.Days.Select((d, i) => Day(d, layout, ranges, i, table, measures))],
            Verdicts = judge.Judge(layout.Facts),
            GaveWay = GaveWay.Of(frame, layout, judge),
            Notes = [.. NextNotes.Of(frame, layout), .. missed],
        };
    }

    /// <summary>The rider as the document names them.</summary>
    public static RiderEntry Rider(PlanInForce plan, string zone) => new()
    {
        Label = plan.Rider.Label,
        Tier = plan.Tier,
        Experience = plan.Rider.Experience,
        TimeZone = zone,
        PlannedHours = plan.PlannedHours,
        PlannedHoursFromHistory = plan.PlannedHoursFromHistory,
    };

    /// <summary>A session as written, at one length.</summary>
    public static NextSessionEntry Session(StockRide ride, int least, int most, SessionMeasures measures) => new()
    {
        Kind = ride.Kind,
        Session = ride.Name,
        Minutes = ride.Minutes,
        MinutesFrom = least,
        MinutesTo = most,
        ExpectedStress = ride.Figures.Stress,
        Blocks = ride.IsUsual ? null : ride.Fitted.Blocks,
        Sentence = ride.IsUsual ? "" : SessionWords.Of(ride.Fitted, measures),
        Stands = ride.Stands,
        CalledFor = CalledFor(ride.Name),
    };

    /// <summary>A row of a plan table as it stands.</summary>
    public static NextSessionEntry Row(PlannedSession row, StockRide? ride, SessionMeasures measures) => (ride is null
        ? new NextSessionEntry
        {
            Kind = row.Kind,
            Session = row.Session,
            Minutes = row.Minutes ?? 0,
            MinutesFrom = row.Minutes ?? 0,
            MinutesTo = row.Minutes ?? 0,
            ExpectedStress = row.Stress,
            Blocks = row.Blocks,
            Sentence = "",
            CalledFor = CalledFor(row.Session),
        }
        : Session(ride, ride.Minutes, ride.Minutes, measures)) with
    {
        Kind = row.Kind,
        Session = row.Session,
        ExpectedStress = row.Stress ?? ride?.Figures.Stress,
        Sentence = row.Note is { } note ? Shown.Sentence(note) : row.Kind == PlannedKind.Event ? "The event." : ride is null or { IsUsual: true } ? "" : SessionWords.Of(ride.Fitted, measures),
        Stands = true,
        Row = row,
    };

    private static string? CalledFor(string? name) => (name is null ? null : SessionLibrary.Find(name)?.Purpose) switch
    {
        SessionPurpose.Test => "test",
        SessionPurpose.Openers => "openers",
        _ => null,
    };

    private static NextDayEntry Day(DayFrame day, Layout layout, PrintedRanges ranges, int index, PlanTable table, SessionMeasures measures)
    {
        var rows = table.On(day.Date).Where(r => !r.MadeHere && !r.IsRest).ToArray();
        var isWritten = rows.Length > 0 && day.Ridden is null && (day.Standing.Length > 0 || day.Exception == ExceptionKind.Event);
        return new NextDayEntry
        {
            Date = day.Date,
            Kind = layout.Facts.Days[index].Kind,
            Exception = day.Exception,
            RiddenMinutes = (int)Math.Round((day.Ridden?.RideSeconds ?? 0) / 60),
            RiddenStress = day.Ridden?.Stress ?? 0,
            Sessions = isWritten
                ? [.. rows.Select((r, i) => Row(r, i < day.Standing.Length ? day.Standing[i] : null, measures))]
                : layout.Rides[index] is [{ Stands: false } ride] ? [Session(ride, ranges.Least[index], ranges.Most[index], measures)]
                : [.. layout.Rides[index].Select(r => Session(r, r.Minutes, r.Minutes, measures))],
        };
    }
}
