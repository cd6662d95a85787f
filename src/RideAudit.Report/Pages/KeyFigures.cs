using RideAudit.Document;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Report.Words;

namespace RideAudit.Report.Pages;

/// <summary>The four figures of page one.</summary>
/// <param name="review">The review.</param>
/// <param name="fonts">Fonts.</param>
/// <param name="width">Width, pt.</param>
/// <param name="density">How closely it is set.</param>
internal sealed class KeyFigures(ReviewDocument review, FontSet fonts, float width, Density density) : Block
{
    private static readonly TextStyle Large = new(Weight.SemiBold, 20, Palette.Ink);

    /// <inheritdoc/>
    public override float Height => density.Compact ? 61 : 66;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Hairline(x, x + width, y);
        (string Figure, string Name, string Context)[] figures = [Hours(), Stress(), Ramp(), Longest()];
        float top = y + (density.Compact ? 0 : 2);
        float column = width / figures.Length;
        for (int i = 0; i < figures.Length; i++)
        {
            float left = x + (i * column);
            surface.Text(figures[i].Figure, Large, left, top + 25);
            TextLine.Fit(fonts, figures[i].Name, Styles.Body, column - 6).Draw(surface, left, top + 40);
            TextLine.Fit(fonts, figures[i].Context, Styles.Quiet, column - 6).Draw(surface, left, top + 53);
        }

        surface.Hairline(x, x + width, y + Height);
    }

    private (string, string, string) Hours()
    {
        string planned = review.Rider.PlannedHours is { } hours
            ? review.Rider.PlannedHoursFromHistory ? $"recent mean {Say.Unit(hours, 1, "h")}" : $"of {Say.Unit(hours, 1, "h")} planned"
            : "ridden";
        return (Say.Unit(review.Week.Hours, 1, "h"), planned, Say.Count(review.Week.RideCount, "ride"));
    }

    private (string, string, string) Stress()
    {
        string context = review.Week.StressUnknownHours > 0
            ? $"{Say.Unit(review.Week.StressUnknownHours, 1, "h")} not covered"
            : review.Week.StressMeanBefore is { } mean ? $"four-week mean {Say.Number(mean)}" : "no weeks before";
        return (Say.Number(review.Week.Stress), "training stress, points", context);
    }

    private (string, string, string) Ramp()
    {
        string context = review.Week.SettlingIn ? $"settling in, load {Say.Number(review.Week.ChronicLoad)}" : $"chronic load now {Say.Number(review.Week.ChronicLoad)}";
        return (Say.Change(review.Week.RampPerWeek), "ramp, points a week", context);
    }

    private (string, string, string) Longest()
    {
        string context = review.Week.LongRideAskedSeconds is { } asked ? $"{Say.Length(asked)} asked" : "none asked";
        return (review.Week.LongestRideSeconds > 0 ? Say.Length(review.Week.LongestRideSeconds) : Say.Missing, "longest ride", context);
    }
}
