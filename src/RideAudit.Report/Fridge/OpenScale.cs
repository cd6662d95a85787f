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
        return WeekScale.Of(days.Select(d => d.Minutes / 60.0), days.SelectMany(d => d.Sessions).Select(HeightOf));
    }

    /// <summary>Height of a session's block: points an hour as a share of threshold's hundred; 0 where length or stress is unknown.</summary>
    public static double HeightOf(NextSessionEntry session) =>
        session is { Minutes: > 0, ExpectedStress: { } stress } ? stress / 100 / (session.Minutes / 60.0) : 0;
}
