using RideAudit.Document.Layouts;
using RideAudit.Report.Look;

namespace RideAudit.Report.Fridge;

/// <summary>The scale that the weeks of a document share, so that they can be laid beside each other.</summary>
internal static class OpenScale
{
    /// <summary>The scale of a document's weeks.</summary>
    public static WeekScale Of(NextDocument document)
    {
        var days = document.Weeks.SelectMany(w => w.Days).ToList();
        return WeekScale.Of(days.Select(d => Math.Max(d.Minutes, d.RiddenMinutes) / 60.0), days.SelectMany(d => d.Sessions).Select(HeightOf).Concat(days.Select(RiddenHeightOf)));
    }

    /// <summary>Height of a ridden day's block, in the same measure; 0 where nothing is ridden or its stress is unknown.</summary>
    public static double RiddenHeightOf(NextDayEntry day) => day.RiddenMinutes > 0 ? day.RiddenStress / 100 / (day.RiddenMinutes / 60.0) : 0;

    /// <summary>Height of a session's block: points an hour as a share of threshold's hundred; 0 where length or stress is unknown.</summary>
    public static double HeightOf(NextSessionEntry session) =>
        session is { Minutes: > 0, ExpectedStress: { } stress } ? stress / 100 / (session.Minutes / 60.0) : 0;
}
