using System.Collections.Immutable;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using RideAudit.Document.Layouts;
using RideAudit.Formatting;
using RideAudit.Ingest;
using RideAudit.Next;
using RideAudit.Plan;
using RideAudit.Review;

namespace RideAudit.Web;

/// <summary>The weeks to come: what the plan tables say of them, what the rules say of that, and a layout that can be taken over.</summary>
/// <param name="content">The files, with the tables as they are edited.</param>
/// <param name="rider">The rider.</param>
/// <param name="request">From when it is looked.</param>
internal sealed class WeeksAhead(FolderContent content, Plan.Rider rider, ReviewRequest request)
{
    private const int WeeksShown = 8;

    /// <summary>The rows as the page shows them, as JSON.</summary>
    /// <param name="sheets">The tables.</param>
    /// <param name="first">The first day of the first week to come.</param>
    public static string Table(PlanSheets sheets, LocalDate first)
    {
        var rows = sheets.Rows().ToArray();
        var planned = rows.Where(r => r.Date is not null).Select(r => WeekOf(LocalDatePattern.Iso.Parse(r.Date!).Value, first));
        var weeks = Enumerable.Range(0, WeeksShown).Select(i => first.PlusDays(7 * i)).Concat(planned).Distinct().Order();
        var state = new State(
            Iso(first),
            [.. weeks.Select(Iso)],
            rows,
            [.. Enum.GetValues<PlannedKind>().Select(PlannedKinds.WordOf)],
            [.. Enum.GetValues<ExceptionKind>().Select(Words.Of)],
            [.. sheets.Mistakes()]);
        return JsonSerializer.Serialize(state, PageJson.Default.Plan);
    }

    /// <summary>The verdicts of planned weeks.</summary>
    /// <param name="weeks">How many.</param>
    public NextDocument Check(int weeks) => PlanCheck.Build(content, rider, request, content.Plan, weeks);

    /// <summary>A layout.</summary>
    /// <param name="weeks">How many weeks.</param>
    public NextDocument LayOut(int weeks) => NextBuilder.Build(content, rider, request, weeks, content.Plan);

    /// <summary>What is to be said of days that a layout left alone.</summary>
    public static string Kept(ImmutableArray<LocalDate> days) =>
        days.IsEmpty ? "" : $"Rows made by hand stay as they are: {Shown.List(days.Select(Shown.ShortDay))}.";

    private static LocalDate WeekOf(LocalDate date, LocalDate first) => first.PlusDays((int)Math.Floor(Period.DaysBetween(first, date) / 7.0) * 7);

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);

    /// <summary>What the page shows.</summary>
    /// <param name="First">The first week to come.</param>
    /// <param name="Weeks">Weeks that can be chosen.</param>
    /// <param name="Rows">Every row.</param>
    /// <param name="Kinds">The words of planned kinds.</param>
    /// <param name="Exceptions">The words of what a day can be excepted for.</param>
    /// <param name="Mistakes">What is wrong with whole tables.</param>
    internal sealed record State(string First, string[] Weeks, PlanSheets.Row[] Rows, string[] Kinds, string[] Exceptions, string[] Mistakes);
}
