using RideAudit.Document.Layouts;

namespace RideAudit.Report.Fridge;

/// <summary>The scale that the weeks of a document share, so that they can be laid beside each other.</summary>
/// <param name="Hours">Hours that a day is wide: those of the longest day, and no fewer than on a review’s page one.</param>
/// <param name="Tallest">Height of the tallest block as a multiple of threshold power’s, 1 or more.</param>
internal readonly record struct OpenScale(double Hours, double Tallest)
{
    private const double QuietestDayHours = 2.75;

    /// <summary>The scale of a document's weeks.</summary>
    public static OpenScale Of(NextDocument document)
    {
        var days = document.Weeks.SelectMany(w => w.Days).ToList();
        return new OpenScale(
            days.Select(d => d.Minutes / 60.0).Append(QuietestDayHours).Max(),
            days.SelectMany(d => d.Sessions).Select(HeightOf).Append(1).Max());
    }

    /// <summary>Height of a session's block: points an hour as a share of threshold's hundred; 0 where length or stress is unknown.</summary>
    public static double HeightOf(NextSessionEntry session) =>
        session is { Minutes: > 0, ExpectedStress: { } stress } ? stress / 100 / (session.Minutes / 60.0) : 0;
}
